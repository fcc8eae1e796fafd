using System.Globalization;
using System.Resources;

namespace Slantwise.Desk.Words;

/// <summary>The words of what a unit says: the order of levels, growth, talks, decisions, and a lesson in short.</summary>
public static class UnitWords
{
    private static readonly ResourceManager Texts = new(typeof(UnitWords));

    /// <summary>A sentence in a given language, its gaps filled.</summary>
    /// <param name="key">Its name in <c>UnitWords.resx</c>.</param>
    /// <param name="language">The language; English where there is no translation.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Text(string key, CultureInfo language, params object?[] arguments)
    {
        var text = Texts.GetString(key, language)
            ?? throw new InvalidOperationException($"The unit has no words for '{key}'.");
        return arguments.Length == 0 ? text : string.Format(language, text, arguments);
    }

    /// <summary>A sentence in the reader's language, its gaps filled.</summary>
    /// <param name="key">Its name in <c>UnitWords.resx</c>.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Say(string key, params object?[] arguments) => Text(key, CultureInfo.CurrentUICulture, arguments);

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="arguments">What the other gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">One of the two keys has no words.</exception>
    public static string SayCount(string key, int count, params object?[] arguments) =>
        Say(key + (count == 1 ? "One" : "Many"), [count, .. arguments]);
}
