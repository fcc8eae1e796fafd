using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Words;

/// <summary>What is said about pages that were read: remarks on a file or page, doubts about an item, what an item asks and says.</summary>
public static class ScanWords
{
    private static readonly ResourceManager Texts = new(typeof(ScanWords));

    /// <summary>The sentence with its gaps.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No words about a scan for '{key}'.");

    internal static string Sentence(string key, CultureInfo culture, IEnumerable<string> details) =>
        string.Format(culture, Text(key, culture), [.. details.Select(d => (object)Shown(d, culture))]);

    // A day is kept as 2026-11-03 and shown as the reader writes it.
    private static string Shown(string detail, CultureInfo culture) =>
        DateOnly.TryParseExact(detail, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day.ToString("d", culture) : detail;
}
