using System.Text;

namespace Slantwise.Records.Checks;

internal static class TextCheck
{
    /// <summary>Refuses a text that is too long or holds characters nobody can see. An empty one is fine.</summary>
    /// <param name="arguments">What leads the sentence; the length allowed and the length found follow.</param>
    public static void Add(List<Finding> findings, string? text, int lengthMost, string tooLongKey, params object[] arguments)
    {
        if (text is null) return;
        if (text.Length > lengthMost) findings.Add(Finding.Refused(tooLongKey, [.. arguments, lengthMost, text.Length]));
        else if (HasControl(text)) findings.Add(Finding.Refused("TextHasControl", Visible(text)));
    }

    /// <summary>Whether a text holds control characters other than line breaks and tabs: no store keeps all of them and no page shows them.</summary>
    public static bool HasControl(string text) => text.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t'));

    /// <summary>A name fit to lead a sentence, even where it is empty.</summary>
    public static string Label(string? name) => string.IsNullOrWhiteSpace(name) ? "—" : Visible(name);

    /// <summary>A text fit to be shown in a sentence: control characters as dots, at most 60 characters.</summary>
    public static string Visible(string text)
    {
        var shown = new StringBuilder();
        foreach (var c in text.AsSpan(0, Math.Min(text.Length, 60))) shown.Append(char.IsControl(c) ? '·' : c);
        if (text.Length > 60) shown.Append('…');
        return shown.ToString();
    }
}
