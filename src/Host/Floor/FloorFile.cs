using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace Slantwise.Host.Floor;

/// <summary>A file of the floor's pages, in the forms the build made of it.</summary>
internal sealed class FloorFile
{
    private static readonly (string Coding, string Ending)[] Forms = [("br", ".br"), ("gzip", ".gz")];

    private readonly (string Coding, byte[] Bytes)[] packed;
    private readonly byte[] plain;
    private readonly string mediaType;
    private readonly bool isHashed;
    private readonly string tag;

    private FloorFile(string path, string name)
    {
        plain = File.ReadAllBytes(path);
        packed = [.. Forms.Where(f => File.Exists(path + f.Ending)).Select(f => (f.Coding, File.ReadAllBytes(path + f.Ending)))];
        mediaType = MediaType(Path.GetExtension(name));
        isHashed = name.StartsWith("assets/", StringComparison.Ordinal) && !name.EndsWith(".txt", StringComparison.Ordinal);
        tag = Convert.ToHexStringLower(SHA256.HashData(plain))[..16];
    }

    /// <summary>The files of a folder by their name in it, with slashes.</summary>
    public static Dictionary<string, FloorFile> In(string folder)
    {
        var files = new Dictionary<string, FloorFile>(StringComparer.Ordinal);
        if (!Directory.Exists(folder)) return files;
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            if (path.EndsWith(".br", StringComparison.Ordinal) || path.EndsWith(".gz", StringComparison.Ordinal)) continue;
            var name = Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');
            files.Add(name, new FloorFile(path, name));
        }
        return files;
    }

    /// <summary>Answers a request with the smallest form the browser takes.</summary>
    public IResult Answer(HttpContext http)
    {
        var headers = http.Response.Headers;
        // A name with a hash in it never holds anything else; all other names are asked again, so that a new version is seen.
        headers.CacheControl = isHashed ? "public, max-age=31536000, immutable" : "no-cache";
        headers.Vary = "Accept-Encoding";
        var accepted = http.Request.GetTypedHeaders().AcceptEncoding;
        var (coding, bytes) = packed.Where(p => accepted.Any(a => a.Quality is not 0 && a.Value.Equals(p.Coding, StringComparison.OrdinalIgnoreCase)))
            .FirstOrDefault((Coding: "", Bytes: plain));
        if (coding.Length > 0) headers.ContentEncoding = coding;
        return Results.Bytes(bytes, mediaType, entityTag: new EntityTagHeaderValue($"\"{tag}{coding}\""));
    }

    private static string MediaType(string extension) => extension switch
    {
        ".html" => "text/html; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".woff2" => "font/woff2",
        ".webmanifest" => "application/manifest+json",
        ".txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    };
}
