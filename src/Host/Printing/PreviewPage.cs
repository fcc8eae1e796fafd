using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.WebUtilities;
using Slantwise.Engines.Drawing;
using Slantwise.Host.Words;

namespace Slantwise.Host.Printing;

/// <summary>The pages of a document as drawings, a few at a time, for the frame in the desk's print page: the same scenes as in the PDF.</summary>
internal static class PreviewPage
{
    private const int ShownCount = 6;

    public static IResult Of(IReadOnlyList<Scene> pages, PrintKind kind, HttpRequest request)
    {
        var from = int.TryParse(request.Query["from"].ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : 1;
        from = Math.Clamp((from - 1) / ShownCount * ShownCount + 1, 1, Math.Max(1, pages.Count));
        var shown = pages.Skip(from - 1).Take(ShownCount).ToList();
        var title = HostWords.Say("TitleOf" + kind);
        var heading = shown.Count switch
        {
            0 => HostWords.Say("PrintNoPupils"),
            1 => HostWords.Say("PreviewOfOne", title, from, pages.Count),
            _ => HostWords.Say("PreviewOf", title, from, from + shown.Count - 1, pages.Count),
        };
        var html = new StringBuilder();
        html.Append(CultureInfo.InvariantCulture, $"""
            <!DOCTYPE html>
            <html lang="{CultureInfo.CurrentUICulture.TwoLetterISOLanguageName}">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{Encoded(heading)}</title>
            <link rel="stylesheet" href="/_content/Slantwise.Desk/preview.css">
            </head>
            <body>
            <h1>{Encoded(heading)}</h1>
            <div class="pages">
            """);
        for (var i = 0; i < shown.Count; i++)
        {
            var lies = shown[i].WidthMm > shown[i].HeightMm ? "lying" : "standing";
            html.Append(CultureInfo.InvariantCulture, $"\n<figure class=\"{lies}\">{SvgWriter.Write(shown[i])}<figcaption>{from + i}</figcaption></figure>");
        }
        html.Append("\n</div>");
        if (pages.Count > ShownCount) Links(html, request, from, pages.Count);
        html.Append("\n</body>\n</html>");
        return Results.Content(html.ToString(), "text/html; charset=utf-8");
    }

    private static void Links(StringBuilder html, HttpRequest request, int from, int count)
    {
        html.Append(CultureInfo.InvariantCulture, $"\n<nav aria-label=\"{Encoded(HostWords.Say("PreviewPages"))}\">");
        var query = request.Query.Where(q => q.Key != "from").ToDictionary(q => q.Key, q => (string?)q.Value.ToString());
        for (var first = 1; first <= count; first += ShownCount)
        {
            query["from"] = first.ToString(CultureInfo.InvariantCulture);
            var words = Encoded(HostWords.Say("PreviewMore", first, Math.Min(count, first + ShownCount - 1)));
            var current = first == from ? " aria-current=\"page\"" : "";
            html.Append(CultureInfo.InvariantCulture, $"\n<a href=\"{Encoded(QueryHelpers.AddQueryString(request.Path, query))}\"{current}>{words}</a>");
        }
        html.Append("\n</nav>");
    }

    private static string Encoded(string text) => HtmlEncoder.Default.Encode(text);
}
