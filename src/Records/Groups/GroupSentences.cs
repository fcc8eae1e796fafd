using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Groups;

/// <summary>The sentences about a lesson's groups.</summary>
public static class GroupSentences
{
    private static readonly ResourceManager Texts = new(typeof(GroupSentences));

    /// <summary>A sentence with its gaps filled.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <param name="gaps">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Text(string key, CultureInfo culture, params object[] gaps) =>
        string.Format(culture, Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for '{key}' in the words about groups."), gaps);

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="gaps">What the other gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">One of the two keys has no sentence.</exception>
    public static string TextCount(string key, CultureInfo culture, int count, params object[] gaps) => Text(key + (count == 1 ? "One" : "Many"), culture, [count, .. gaps]);
}
