using System.Globalization;
using System.Resources;

namespace Slantwise.Host.Words;

/// <summary>The words of the commands and of the pages the program itself shows.</summary>
internal static class HostWords
{
    private static readonly ResourceManager Texts = new(typeof(HostWords));

    /// <summary>A word or sentence in the reader's language, its gaps filled.</summary>
    /// <param name="key">Its name in <c>HostWords.resx</c>.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    public static string Say(string key, params object?[] arguments)
    {
        var text = In(CultureInfo.CurrentUICulture, key);
        return arguments.Length == 0 ? text : string.Format(CultureInfo.CurrentCulture, text, arguments);
    }

    /// <summary>Words without gaps in a language that may not be the reader's: a printed page has its own.</summary>
    /// <param name="language">The language; English where there is no translation.</param>
    /// <param name="key">Their name in <c>HostWords.resx</c>.</param>
    public static string In(CultureInfo language, string key) =>
        Texts.GetString(key, language) ?? throw new InvalidOperationException($"The commands have no words for '{key}'.");

    /// <summary>A day with its month as a word, so that nobody takes it for another.</summary>
    /// <param name="day">The day.</param>
    /// <param name="language">The language; the reader's if none is named.</param>
    public static string Day(DateOnly day, CultureInfo? language = null)
    {
        language ??= CultureInfo.CurrentUICulture;
        return day.ToString(In(language, "DayPattern"), language);
    }

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="arguments">What the other gaps are filled with, in order.</param>
    public static string SayCount(string key, int count, params object?[] arguments) =>
        Say(key + (count == 1 ? "One" : "Many"), [count, .. arguments]);
}
