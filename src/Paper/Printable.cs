using System.Globalization;
using System.Text;

namespace Slantwise.Paper;

/// <summary>Text as paper can show it.</summary>
internal static class Printable
{
    /// <summary>One line: accents joined to their letters, breaks and controls as spaces, half a surrogate pair as U+FFFD.</summary>
    public static string Of(string text)
    {
        if (text.All(c => c is >= ' ' and <= '~')) return text;
        var line = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            // Format characters (joiners, direction marks) have no ink and no glyph.
            switch (Rune.GetUnicodeCategory(rune))
            {
                case UnicodeCategory.Format: break;
                case UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator: line.Append(' '); break;
                default: line.Append(rune.ToString()); break;
            }
        }
        return line.ToString().Normalize(NormalizationForm.FormC);
    }
}
