using System.Globalization;
using System.Resources;

namespace Slantwise.Desk.Words;

/// <summary>The words of the balance studio and of the comparison of two postures.</summary>
public static class StudioWords
{
    private static readonly ResourceManager Texts = new(typeof(StudioWords));

    /// <summary>A sentence in a given language, its gaps filled.</summary>
    /// <param name="key">Its name in <c>StudioWords.resx</c>.</param>
    /// <param name="language">The language; English where there is no translation.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Text(string key, CultureInfo language, params object?[] arguments)
    {
        var text = Texts.GetString(key, language)
            ?? throw new InvalidOperationException($"The studio has no words for '{key}'.");
        return arguments.Length == 0 ? text : string.Format(language, text, arguments);
    }

    /// <summary>A sentence in the reader's language, its gaps filled.</summary>
    /// <param name="key">Its name in <c>StudioWords.resx</c>.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Say(string key, params object?[] arguments) => Text(key, CultureInfo.CurrentUICulture, arguments);
}
