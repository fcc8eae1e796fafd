using System.Globalization;
using System.Resources;

namespace Slantwise.Desk.Words;

/// <summary>The words of designing levels, in the reader's language.</summary>
public static class DesignerWords
{
    private static readonly ResourceManager Texts = new(typeof(DesignerWords));

    /// <summary>A word or sentence, its gaps filled.</summary>
    /// <param name="key">Its name in <c>DesignerWords.resx</c>.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Say(string key, params object?[] arguments)
    {
        var text = Texts.GetString(key, CultureInfo.CurrentUICulture) ?? throw new InvalidOperationException($"The level designer has no words for '{key}'.");
        return arguments.Length == 0 ? text : string.Format(CultureInfo.CurrentCulture, text, arguments);
    }

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="arguments">What the other gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">One of the two keys has no words.</exception>
    public static string SayCount(string key, int count, params object?[] arguments) => Say(key + (count == 1 ? "One" : "Many"), [count, .. arguments]);
}
