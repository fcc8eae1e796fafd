using System.Net;
using System.Text;

namespace Slantwise.Surface.Tests.Host;

public sealed class ScanUploadTests
{
    [Fact]
    public async Task Upload_FilesThatAreNone_AreEachSaidAndNothingStays()
    {
        await using var served = await ServedHost.StartAsync();
        var cancel = TestContext.Current.CancellationToken;
        using var form = new MultipartFormDataContent
        {
            { new StringContent("not a file"), "note" },
            { new ByteArrayContent(Encoding.UTF8.GetBytes("no picture")), "files", "../../etc/one.jpg" },
            { new ByteArrayContent([]), "files", "two.pdf" },
        };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/scans/upload") { Content = form };
        request.Headers.Accept.ParseAdd("application/x-ndjson");
        var answer = await served.Client.SendAsync(request, cancel);
        Assert.Equal("application/x-ndjson", answer.Content.Headers.ContentType!.MediaType);
        var lines = (await answer.Content.ReadAsStringAsync(cancel)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, lines.Length);
        Assert.Contains("neither a JPEG or PNG", lines[0]);
        Assert.Contains("empty", lines[1]);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(served.Folder, "incoming")));
    }

    [Fact]
    public async Task Upload_PlainForm_LeadsToThePageThatSaysWhatBecameOfIt()
    {
        await using var served = await ServedHost.StartAsync();
        var cancel = TestContext.Current.CancellationToken;
        using var form = new MultipartFormDataContent { { new ByteArrayContent(Encoding.UTF8.GetBytes("no picture")), "files", "a/b\\one.jpg" } };
        var sent = await served.Client.PostAsync("/scans/upload", form, cancel);
        Assert.Equal(HttpStatusCode.SeeOther, sent.StatusCode);
        var page = await served.Client.GetStringAsync(sent.Headers.Location, cancel);
        Assert.Contains("<strong>one.jpg</strong>", page);
        Assert.Contains("neither a JPEG or PNG", page);
    }

    [Theory]
    [InlineData("/scans/01990000-0000-7000-8000-00000000ffff/pictures/Photo")]
    [InlineData("/scans/kept/01990000-0000-7000-8000-00000000ffff/01990000-0000-7000-8000-00000000ffff/Level-1-1-0")]
    [InlineData("/scans/kept/01990000-0000-7000-8000-00000000ffff/01990000-0000-7000-8000-00000000ffff/Photo")]
    public async Task Picture_ThatIsNotHere_IsNotFound(string address)
    {
        await using var served = await ServedHost.StartAsync();
        Assert.Equal(HttpStatusCode.NotFound, (await served.Client.GetAsync(address, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Upload_FromAnotherSite_IsRefused()
    {
        await using var served = await ServedHost.StartAsync();
        using var form = new MultipartFormDataContent { { new ByteArrayContent([1]), "files", "one.jpg" } };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/scans/upload") { Content = form };
        request.Headers.Add("Origin", "https://elsewhere.example");
        Assert.Equal(HttpStatusCode.Forbidden, (await served.Client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Upload_ToALessonThatIsNotHere_SaysSo()
    {
        await using var served = await ServedHost.StartAsync();
        using var form = new MultipartFormDataContent { { new ByteArrayContent([1]), "files", "one.jpg" } };
        var answer = await served.Client.PostAsync("/scans/upload?lesson=01990000-0000-7000-8000-00000000ffff", form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }
}
