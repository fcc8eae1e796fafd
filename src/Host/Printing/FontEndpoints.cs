using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;
using Slantwise.Paper;

namespace Slantwise.Host.Printing;

/// <summary>The printed type family, for pages: screen and paper share one.</summary>
internal static class FontEndpoints
{
    public static void MapFonts(this WebApplication app)
    {
        Map(app, "/fonts/regular.ttf", PaperFonts.Regular);
        Map(app, "/fonts/bold.ttf", PaperFonts.Bold);
        app.MapGet("/fonts/licence.txt", () => Results.Text(PaperFonts.Licence));
    }

    private static void Map(WebApplication app, string address, ReadOnlyMemory<byte> font)
    {
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(font.Span))[..16]}\"");
        app.MapGet(address, (HttpContext http) =>
        {
            // A week, then a question by tag: a new version of the program may bring new fonts under the same address.
            http.Response.Headers.CacheControl = "public, max-age=604800";
            return Results.Bytes(font, "font/ttf", entityTag: tag);
        });
    }
}
