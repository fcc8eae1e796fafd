using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Slantwise.Paper;

/// <summary>Says in a finished PDF which language it is in: the drawing library has no word for it.</summary>
/// <remarks>Appended as an incremental update: the catalogue written again, the rest untouched. Source: [ISO32000] 7.5.6, 7.7.2, 14.9.2.</remarks>
internal static partial class PdfLanguage
{
    public static byte[] Declared(byte[] pdf, CultureInfo language)
    {
        // Latin-1 keeps each byte one character, so a place in the text is a place in the file.
        var text = Encoding.Latin1.GetString(pdf);
        var tail = Tail().Matches(text)[^1];
        var start = long.Parse(tail.Groups["start"].ValueSpan, CultureInfo.InvariantCulture);
        var trailer = tail.Groups["trailer"].Value;
        var root = int.Parse(Root().Match(trailer).Groups[1].ValueSpan, CultureInfo.InvariantCulture);
        var catalogue = Regex.Match(text, $@"(?<=[\r\n]){root} 0 obj\s*<<(?<entries>.*?)>>\s*endobj", RegexOptions.Singleline | RegexOptions.CultureInvariant);

        var update = new StringBuilder();
        if (!text.EndsWith('\n')) update.Append('\n');
        var place = pdf.Length + update.Length;
        var entries = catalogue.Groups["entries"].Value.Trim();
        update.Append(CultureInfo.InvariantCulture, $"{root} 0 obj\n<<{entries}\n/Lang ({language.Name})>>\nendobj\n");
        var table = pdf.Length + update.Length;
        // Each line of the table is 20 bytes, its end of two bytes included.
        update.Append(CultureInfo.InvariantCulture, $"xref\n{root} 1\n{place:0000000000} 00000 n \n");
        update.Append(CultureInfo.InvariantCulture, $"trailer\n<<{trailer.Trim()}\n/Prev {start}>>\nstartxref\n{table}\n%%EOF\n");
        return [.. pdf, .. Encoding.Latin1.GetBytes(update.ToString())];
    }

    [GeneratedRegex(@"trailer\s*<<(?<trailer>.*?)>>\s*startxref\s+(?<start>\d+)\s+%%EOF", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Tail();

    [GeneratedRegex(@"/Root\s+(\d+)\s+0\s+R", RegexOptions.CultureInvariant)]
    private static partial Regex Root();
}
