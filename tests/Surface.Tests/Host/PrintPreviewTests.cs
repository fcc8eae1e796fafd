using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Slantwise.Surface.Tests.Host;

public sealed partial class PrintPreviewTests(DemoFolder demo)
{
    private static readonly string[] Kinds = ["sheets", "class", "observation", "stations", "poster", "cues", "lesson", "risk", "pack"];

    [Fact]
    public async Task Print_EveryDocument_IsAPdfByLinkAndByCommand()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        foreach (var kind in Kinds)
        {
            var answer = await served.Client.GetAsync($"/print/lessons/{lesson}/{kind}.pdf?cards=full&poster-size=two", TestContext.Current.CancellationToken);
            Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
            Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)));

            var file = Path.Combine(folder.FullPath, $"{kind}.pdf");
            var run = await HostProgram.RunAsync("sheet", "print", "--lesson", lesson, "--kind", kind, "-o", file, "--json", "--data", folder.FullPath);
            Assert.True(run.Json()["pageCount"]!.GetValue<int>() > 0);
            Assert.True(new FileInfo(file).Length > 1000);
        }
    }

    [Fact]
    public async Task Preview_OfAPile_ShowsItsFirstPagesAndLinksToTheOthers()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var first = await PageAsync(served, $"/print/lessons/{lesson}/sheets/preview?size=letter&signs=1");
        Assert.Equal(6, Svg().Count(first));
        Assert.Contains("viewBox=\"0 0 215.9 279.4\"", first);
        Assert.Contains("aria-current=\"page\">Pages 1 to 6", first);
        var next = WebUtility.HtmlDecode(Link().Matches(first)[1].Groups[1].Value);
        Assert.Contains("size=letter", next);
        var second = await PageAsync(served, next);
        Assert.Contains("pages 7 to 12 of", second);
        // What is only looked at is the same scene as the PDF's, drawn with no colour of the screen.
        Assert.Contains("/_content/Slantwise.Desk/preview.css", second);
        Assert.Equal(HttpStatusCode.OK, (await served.Client.GetAsync("/_content/Slantwise.Desk/preview.css", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task PrintPage_WithOptions_ShowsThemAndLeadsToTheSamePages()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var page = await PageAsync(served, $"/lessons/{lesson}/print?kind=stations&size=letter&cards=full&signs=1");
        Assert.Contains($"src=\"/print/lessons/{lesson}/stations/preview?size=letter&amp;cards=full\"", page);
        Assert.Contains($"href=\"/print/lessons/{lesson}/stations.pdf?size=letter&amp;cards=full\"", page);
        Assert.Contains("<option value=\"letter\" selected", page);
        Assert.Contains("<input type=\"hidden\" name=\"signs\" value=\"1\"", page);
        foreach (var kind in Kinds)
            Assert.Equal(HttpStatusCode.OK, (await served.Client.GetAsync($"/print/lessons/{lesson}/{kind}/preview?lang=es&cream=1", TestContext.Current.CancellationToken)).StatusCode);
    }

    private static async Task<string> PageAsync(ServedHost served, string address) => await served.Client.GetStringAsync(address, TestContext.Current.CancellationToken);

    private static async Task<string> LessonAsync(TempFolder folder)
    {
        var lessons = (await HostProgram.RunAsync("list", "lessons", "--json", "--data", folder.FullPath)).Json()["lessons"]!.AsArray();
        return lessons.Last(l => l!["sheetVersion"] is JsonValue)!["id"]!.GetValue<string>();
    }

    [GeneratedRegex("<svg ")]
    private static partial Regex Svg();

    [GeneratedRegex("<a href=\"([^\"]+)\"")]
    private static partial Regex Link();
}
