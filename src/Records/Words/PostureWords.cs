using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Words;

/// <summary>The words of descriptions of postures: parts of the body, and how they are held.</summary>
public static class PostureWords
{
    private static readonly ResourceManager Texts = new(typeof(PostureWords));

    /// <summary>The words with their gaps.</summary>
    /// <param name="key">Their name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Text(string key, CultureInfo culture) =>
        Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No words for '{key}' in the posture words.");

    /// <summary>The words with their gaps filled.</summary>
    /// <param name="key">Their name in the resource file.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="gaps">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Text(string key, CultureInfo culture, params object[] gaps) => string.Format(culture, Text(key, culture), gaps);
}
