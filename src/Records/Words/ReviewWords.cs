using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Words;

/// <summary>What a class's lessons showed, and what to ask about it: for the end of a lesson, and for whoever plans a unit.</summary>
public static class ReviewWords
{
    private static readonly ResourceManager Texts = new(typeof(ReviewWords));

    /// <summary>The sentence with its gaps filled.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Sentence(string key, CultureInfo culture, IReadOnlyList<object> arguments) =>
        string.Format(culture, Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for '{key}' in the review words."), [.. arguments]);
}
