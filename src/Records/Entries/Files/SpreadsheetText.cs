namespace Slantwise.Records.Entries.Files;

/// <summary>Free text in a table: an apostrophe is put before what a spreadsheet would run as a formula, and taken off again.</summary>
internal static class SpreadsheetText
{
    private const string Starts = "=+-@\t\r'";

    public static string Guarded(string text) => text.Length > 0 && Starts.Contains(text[0]) ? "'" + text : text;

    public static string Unguarded(string text) => text.Length > 1 && text[0] == '\'' && Starts.Contains(text[1]) ? text[1..] : text;
}
