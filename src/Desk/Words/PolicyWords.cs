using System.Globalization;
using System.Resources;

namespace Slantwise.Desk.Words;

/// <summary>The words of a school's policy, of restrictions and of how a pupil does a task, in the reader's language.</summary>
public static class PolicyWords
{
    private static readonly ResourceManager Texts = new(typeof(PolicyWords));

    /// <summary>A word or sentence, its gaps filled.</summary>
    /// <param name="key">Its name in <c>PolicyWords.resx</c>.</param>
    /// <param name="arguments">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Say(string key, params object?[] arguments)
    {
        var text = Texts.GetString(key, CultureInfo.CurrentUICulture) ?? throw new InvalidOperationException($"The policy's pages have no words for '{key}'.");
        return arguments.Length == 0 ? text : string.Format(CultureInfo.CurrentCulture, text, arguments);
    }
}
