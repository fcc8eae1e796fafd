using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Words;

/// <summary>The sentences of findings, in every language we speak.</summary>
public static class FindingWords
{
    private static readonly ResourceManager Texts = new(typeof(FindingWords));

    /// <summary>The sentence with its gaps.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for the finding '{key}'.");
}
