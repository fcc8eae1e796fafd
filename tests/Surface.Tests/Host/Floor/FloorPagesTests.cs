using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.RegularExpressions;

namespace Slantwise.Surface.Tests.Host.Floor;

/// <summary>The floor's pages as the program serves what the build laid beside it.</summary>
public sealed partial class FloorPagesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Pages_OfEveryFace_AreOnePageThatIsAskedForAgain()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        var pages = new List<string>();
        foreach (var face in (string[])["/floor/", "/floor/teacher", "/floor/board"])
        {
            using var answer = await served.Client.GetAsync(face, Cancel);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
            Assert.True(answer.Headers.CacheControl!.NoCache);
            Assert.Contains("script-src 'self';", answer.Headers.GetValues("Content-Security-Policy").Single());
            Assert.Contains("camera=(self)", answer.Headers.GetValues("Permissions-Policy").Single());
            pages.Add(await answer.Content.ReadAsStringAsync(Cancel));
        }
        Assert.Single(pages.Distinct());
        // The house's content policy runs no script that stands in the page.
        Assert.DoesNotMatch(InlineScript(), pages[0]);
    }

    [Fact]
    public async Task Pages_WithoutTheSlash_LeadToTheirPlace()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        using var answer = await served.Client.GetAsync("/floor", Cancel);
        Assert.Equal(HttpStatusCode.PermanentRedirect, answer.StatusCode);
        Assert.Equal("/floor/", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task Parts_NamedByTheirHash_AreKeptForAYearAndPackedAsAsked()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        var page = await served.Client.GetStringAsync("/floor/", Cancel);
        var parts = Part().Matches(page).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(parts);
        foreach (var part in parts)
        {
            var plain = await AskAsync(served, part, null);
            var (brotli, gzip) = (await AskAsync(served, part, "gzip, br"), await AskAsync(served, part, "gzip"));
            Assert.Equal((null, "br", "gzip"), (plain.Coding, brotli.Coding, gzip.Coding));
            Assert.True(brotli.Bytes.Length <= gzip.Bytes.Length && gzip.Bytes.Length < plain.Bytes.Length, part);
            Assert.Equal(plain.Bytes, await UnpackedAsync(new BrotliStream(new MemoryStream(brotli.Bytes), CompressionMode.Decompress)));
            Assert.Equal(plain.Bytes, await UnpackedAsync(new GZipStream(new MemoryStream(gzip.Bytes), CompressionMode.Decompress)));
            Assert.Equal("public, max-age=31536000, immutable", plain.Caching);
            Assert.Null((await AskAsync(served, part, "br;q=0")).Coding);
        }
    }

    [Fact]
    public async Task Worker_OfThisBuild_KnowsItsVersionAndIsAskedForAgain()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        var worker = await AskAsync(served, "/floor/sw.js", null);
        Assert.Equal("no-cache", worker.Caching);
        var (text, version) = (Encoding.UTF8.GetString(worker.Bytes), await served.Client.GetStringAsync("/floor/version.txt", Cancel));
        Assert.Matches("^[0-9a-f]{12}$", version);
        Assert.Contains(version, text);
        var page = await served.Client.GetStringAsync("/floor/", Cancel);
        foreach (var part in Part().Matches(page).Select(m => m.Groups[1].Value["/floor/".Length..])) Assert.Contains(part, text);
    }

    [Fact]
    public async Task Page_AskedForByItsTag_IsNotSentAgain()
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        using var first = await served.Client.GetAsync("/floor/", Cancel);
        using var again = new HttpRequestMessage(HttpMethod.Get, "/floor/");
        again.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using var answer = await served.Client.SendAsync(again, Cancel);
        Assert.Equal(HttpStatusCode.NotModified, answer.StatusCode);
    }

    [Theory]
    [InlineData("/floor/floor.webmanifest", "application/manifest+json")]
    [InlineData("/floor/mark.svg", "image/svg+xml")]
    [InlineData("/floor/assets/atkinson-hyperlegible-next.LICENCE.txt", "text/plain")]
    public async Task Parts_OfOtherKinds_AreServedAsWhatTheyAre(string path, string mediaType)
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        using var answer = await served.Client.GetAsync(path, Cancel);
        Assert.Equal((HttpStatusCode.OK, mediaType), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
    }

    [Theory]
    [InlineData("/floor/nothing")]
    [InlineData("/floor/assets/../../appsettings.json")]
    [InlineData("/floor/index.html.br")]
    public async Task Parts_ThatAreNone_AreMissing(string path)
    {
        await using var served = await ServedHost.StartAsync(isDemo: false);
        using var answer = await served.Client.GetAsync(path, Cancel);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task<(byte[] Bytes, string? Coding, string Caching)> AskAsync(ServedHost served, string path, string? accepted)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        foreach (var coding in accepted?.Split(", ") ?? []) request.Headers.AcceptEncoding.Add(StringWithQualityHeaderValue.Parse(coding));
        using var answer = await served.Client.SendAsync(request, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return (await answer.Content.ReadAsByteArrayAsync(Cancel), answer.Content.Headers.ContentEncoding.SingleOrDefault(), answer.Headers.GetValues("Cache-Control").Single());
    }

    private static async Task<byte[]> UnpackedAsync(Stream packed)
    {
        using var bytes = new MemoryStream();
        await packed.CopyToAsync(bytes, Cancel);
        return bytes.ToArray();
    }

    [GeneratedRegex("(?:src|href)=\"(/floor/assets/[^\"]+)\"")]
    private static partial Regex Part();

    [GeneratedRegex("<script(?![^>]*src=)[^>]*>|\\son[a-z]+=", RegexOptions.IgnoreCase)]
    private static partial Regex InlineScript();
}
