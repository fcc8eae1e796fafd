using System.Net;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Host;

public sealed class JoinLinksTests(DemoFolder demo)
{
    [Theory]
    [InlineData("?size=a4", "595.2", "How to join")]
    [InlineData("?size=letter&paper-language=es&at=evil.example", "612", "Cómo entrar")]
    public async Task Poster_OfAnOpenLesson_SaysHowToJoinThisProgram(string query, string widthPt, string title)
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonOfDemo.OpenForTabletsAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        var answer = await served.Client.GetAsync($"/print/lessons/{lesson.LessonId}/join.pdf{query}", TestContext.Current.CancellationToken);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.EndsWith("-how-to-join.pdf", answer.Content.Headers.ContentDisposition!.FileNameStar ?? answer.Content.Headers.ContentDisposition.FileName!.Trim('"'));
        await File.WriteAllBytesAsync(folder.At("join.pdf"), await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken), TestContext.Current.CancellationToken);

        var text = Tool.Run("pdftotext", "-layout", folder.At("join.pdf"), "-");
        Assert.Contains(title, text);
        Assert.Contains($"{lesson.Code[..3]} {lesson.Code[3..]}", text);
        Assert.Contains($"{served.Address.Authority}/floor", text);
        Assert.Contains(lesson.CodeUntil.ToLocalTime().ToString("H:mm", System.Globalization.CultureInfo.InvariantCulture), text);
        Assert.Contains(widthPt, Tool.Run("pdfinfo", folder.At("join.pdf")));
        Tool.Run("pdftoppm", "-r", "100", "-gray", "-png", "-singlefile", folder.At("join.pdf"), folder.At("join"));
        Assert.Equal($"{served.Address}floor/#join={lesson.Code}", Tool.Run("zbarimg", "--quiet", "--raw", folder.At("join.png")).TrimEnd('\n'));
    }

    [Fact]
    public async Task Links_OfALessonThatIsNotOpen_GiveNoCode()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        Assert.Equal(HttpStatusCode.Conflict, await StatusAsync($"/print/lessons/{lessonId}/join.pdf"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync($"/print/lessons/{Guid.NewGuid()}/join.pdf"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync($"/lessons/{lessonId}/floor/pupil.svg"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync($"/lessons/{lessonId}/floor/teacher.svg"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync($"/lessons/{lessonId}/floor"));

        async Task<HttpStatusCode> StatusAsync(string address) => (await served.Client.GetAsync(address, TestContext.Current.CancellationToken)).StatusCode;
    }

    [Fact]
    public async Task Squares_OfAnOpenLesson_AreKeptByNobody()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonOfDemo.OpenForTabletsAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath);
        foreach (var whom in (string[])["pupil", "teacher"])
        {
            var answer = await served.Client.GetAsync($"/lessons/{lesson.LessonId}/floor/{whom}.svg", TestContext.Current.CancellationToken);
            Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
            Assert.True(answer.Headers.CacheControl!.NoStore);
        }
    }

    [Fact]
    public async Task Page_OfAProgramInTheNetwork_NamesTheMachinesAddresses()
    {
        using var folder = await demo.CopyAsync();
        var lesson = await LessonOfDemo.OpenForTabletsAsync(folder);
        await using var served = await ServedHost.StartAsync(folder: folder.FullPath, more: ["--bind", "0.0.0.0"]);
        using var client = new HttpClient { BaseAddress = new UriBuilder(served.Address) { Host = "127.0.0.1" }.Uri };
        var page = await client.GetStringAsync($"/lessons/{lesson.LessonId}/floor", TestContext.Current.CancellationToken);
        Assert.DoesNotContain("--bind", page);
        // Whatever cards this machine has, it has a name.
        Assert.Contains($"{Dns.GetHostName().ToLowerInvariant()}.local", page);
        Assert.DoesNotContain("127.0.0.1:", page[page.IndexOf("id=\"address\"", StringComparison.Ordinal)..].Split("</p>")[0]);
    }
}
