using System.Globalization;

namespace Slantwise.Records.Checks;

/// <summary>Something to say about input: what, where, and what is allowed. Its words are in the resources.</summary>
/// <param name="Severity">Whether the input can be taken.</param>
/// <param name="Key">The name of its sentence in <c>Words/FindingWords.resx</c>.</param>
/// <param name="Arguments">What the sentence's gaps are filled with, in order.</param>
public sealed record Finding(FindingSeverity Severity, string Key, params object[] Arguments)
{
    /// <summary>Where in a file it was found; none for a finding about anything else.</summary>
    public FilePlace? InFile => Arguments.OfType<FilePlace>().FirstOrDefault();

    /// <summary>Where on a pupil's sheet it was found; none for a finding about anything else.</summary>
    public SheetPlace? OnSheet => Arguments.OfType<SheetPlace>().FirstOrDefault();

    /// <summary>Whether the input cannot be taken.</summary>
    public bool IsRefused => Severity == FindingSeverity.Refused;

    /// <summary>The finding as a sentence.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Sentence(CultureInfo culture) => string.Format(culture, Words.FindingWords.Text(Key, culture), Arguments);

    internal static Finding Refused(string key, params object[] arguments) => new(FindingSeverity.Refused, key, arguments);

    internal static Finding Flagged(string key, params object[] arguments) => new(FindingSeverity.Flagged, key, arguments);
}
