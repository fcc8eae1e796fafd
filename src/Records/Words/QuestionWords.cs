using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Words;

/// <summary>The sentences of evidence: reasons to talk, questions, patterns of decision, entries that do not fit.</summary>
public static class QuestionWords
{
    private static readonly ResourceManager Texts = new(typeof(QuestionWords));

    /// <summary>The sentence with its gaps.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for '{key}' in the question words.");

    /// <summary>The sentence with its gaps filled.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language, for words and numbers.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Sentence(string key, CultureInfo culture, IReadOnlyList<object> arguments) =>
        string.Format(culture, Text(key, culture), [.. arguments]);
}
