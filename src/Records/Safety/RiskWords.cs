using System.Globalization;
using System.Resources;

namespace Slantwise.Records.Safety;

/// <summary>The words of risk pages, the same on paper and on screens.</summary>
public static class RiskWords
{
    private static readonly ResourceManager Texts = new(typeof(RiskWords));

    /// <summary>Words with their gaps filled.</summary>
    /// <param name="key">Their name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <param name="gaps">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no words.</exception>
    public static string Text(string key, CultureInfo culture, params object[] gaps)
    {
        var text = Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No words for '{key}' on risk pages.");
        return gaps.Length == 0 ? text : string.Format(culture, text, gaps);
    }

    /// <summary>Words about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="gaps">What the other gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">One of the two keys has no words.</exception>
    public static string TextCount(string key, CultureInfo culture, int count, params object[] gaps) =>
        Text(key + (count == 1 ? "One" : "Many"), culture, [count, .. gaps]);
}
