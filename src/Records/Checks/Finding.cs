using System.Globalization;

namespace Slantwise.Records.Checks;

/// <summary>Something to say about input: what, where, and what is allowed. Its words are in the resources.</summary>
/// <param name="Severity">Whether the input can be taken.</param>
/// <param name="Key">The name of its sentence in <c>Words/FindingWords.resx</c>.</param>
/// <param name="Arguments">What the sentence's gaps are filled with, in order.</param>
public sealed record Finding(FindingSeverity Severity, string Key, params object[] Arguments)
{
    /// <summary>The finding as a sentence.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public string Sentence(CultureInfo culture) => string.Format(culture, Words.FindingWords.Text(Key, culture), Arguments);
}
