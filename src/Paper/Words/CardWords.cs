using System.Globalization;
using System.Resources;

namespace Slantwise.Paper.Words;

/// <summary>Our words on cards, posters, the lesson page and the pack, in one language.</summary>
internal sealed class CardWords(CultureInfo language)
{
    private static readonly ResourceManager Texts = new(typeof(CardWords));

    public string this[string key] =>
        Texts.GetString(key, language) ?? throw new InvalidOperationException($"No words on cards for '{key}'.");

    public string Of(string key, params object[] arguments) => string.Format(language, this[key], arguments);

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    public string Count(string key, int count, params object[] arguments) => Of(key + (count == 1 ? "One" : "Many"), [count, .. arguments]);
}
