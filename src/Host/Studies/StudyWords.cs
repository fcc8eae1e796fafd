using System.Globalization;
using System.Resources;

namespace Slantwise.Host.Studies;

/// <summary>The words of the commands that compute from plain tables.</summary>
internal static class StudyWords
{
    private static readonly ResourceManager Texts = new(typeof(StudyWords));

    /// <summary>A word or sentence in the reader's language, its gaps filled.</summary>
    /// <param name="key">Its name in <c>StudyWords.resx</c>.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    public static string Say(string key, params object?[] arguments)
    {
        var text = Texts.GetString(key, CultureInfo.CurrentUICulture) ?? throw new InvalidOperationException($"There are no words for '{key}'.");
        return arguments.Length == 0 ? text : string.Format(CultureInfo.CurrentCulture, text, arguments);
    }

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="arguments">What the other gaps are filled with, in order.</param>
    public static string SayCount(string key, int count, params object?[] arguments) =>
        Say(key + (count == 1 ? "One" : "Many"), [count, .. arguments]);
}
