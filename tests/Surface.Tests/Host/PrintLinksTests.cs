using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host;

public sealed class PrintLinksTests(DemoFolder demo)
{
    [Fact]
    public async Task Print_OfAPreparedLesson_GivesPdfAndPages()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonAsync(folder, isPrepared: true);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        foreach (var name in new[] { "sheets.pdf", "class.pdf", "observation.pdf", "sheets.pdf?size=letter&lang=es", "sheets.pdf?look=two-up&two-sided=1&signs=1&spare=2&spare-from=9&paper-language=es" })
        {
            var answer = await served.Client.GetAsync($"/print/lessons/{lesson}/{name}", TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal("inline", answer.Content.Headers.ContentDisposition!.DispositionType);
            Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)));
        }
        var svg = await served.Client.GetAsync($"/print/lessons/{lesson}/sheets/1.svg", TestContext.Current.CancellationToken);
        Assert.Equal("image/svg+xml", svg.Content.Headers.ContentType!.MediaType);
        Assert.Contains("<svg", await svg.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.NotFound, (await served.Client.GetAsync($"/print/lessons/{lesson}/sheets/9999.svg", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Print_OfALessonThatIsNotPrepared_SaysWhatToDo()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonAsync(folder, isPrepared: false);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        foreach (var name in new[] { "sheets.pdf", "class.pdf", "sheets/1.svg" })
        {
            var answer = await served.Client.GetAsync($"/print/lessons/{lesson}/{name}", TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
            var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.Contains("not prepared yet", page);
            Assert.Contains($"href=\"/lessons/{lesson}\"", page);
        }
        var missing = await served.Client.GetAsync("/print/lessons/01970000-0000-7000-8000-000000000000/sheets.pdf?lang=es", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);
        Assert.Contains("No existe", await missing.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Fonts_AskedForAgain_AreNotSentAgain()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        foreach (var name in new[] { "regular", "bold" })
        {
            var answer = await served.Client.GetAsync($"/fonts/{name}.ttf", TestContext.Current.CancellationToken);
            Assert.Equal("font/ttf", answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal(TimeSpan.FromDays(7), answer.Headers.CacheControl!.MaxAge);
            using var again = new HttpRequestMessage(HttpMethod.Get, $"/fonts/{name}.ttf");
            again.Headers.IfNoneMatch.Add(answer.Headers.ETag!);
            Assert.Equal(HttpStatusCode.NotModified, (await served.Client.SendAsync(again, TestContext.Current.CancellationToken)).StatusCode);
        }
    }

    private static async Task<string> LessonAsync(TempFolder folder, bool isPrepared)
    {
        var lessons = (await HostProgram.RunAsync("list", "lessons", "--json", "--data", folder.FullPath)).Json()["lessons"]!.AsArray();
        return lessons.First(l => l!["sheetVersion"] is JsonValue == isPrepared)!["id"]!.GetValue<string>();
    }
}
