using System.Globalization;
using System.Resources;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Words;

/// <summary>The sentences of reach: whom a sheet includes, as a question to the teacher.</summary>
public static class ReachWords
{
    private static readonly ResourceManager Texts = new(typeof(ReachWords));

    /// <summary>The sentence with its gaps filled.</summary>
    /// <param name="key">Its name in the resource file.</param>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    /// <param name="gaps">What the gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string Text(string key, CultureInfo culture, params object[] gaps) =>
        string.Format(culture, Texts.GetString(key, culture) ?? throw new InvalidOperationException($"No sentence for '{key}' in the reach words."), gaps);

    /// <summary>A sentence about a number of things: the key with <c>One</c> at its end for 1, <c>Many</c> otherwise.</summary>
    /// <param name="key">The common start of the two names.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="count">How many; also the first gap.</param>
    /// <param name="gaps">What the other gaps are filled with, in order.</param>
    /// <exception cref="InvalidOperationException">One of the two keys has no sentence.</exception>
    public static string TextCount(string key, CultureInfo culture, int count, params object[] gaps) =>
        Text(key + (count == 1 ? "One" : "Many"), culture, [count, .. gaps]);

    /// <summary>A level with its dose, in quotation marks.</summary>
    /// <param name="level">Any level.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Named(Level level, CultureInfo culture) => Text("Level", culture, level.Name, Text("Dose" + level.Dose.Kind, culture, level.Dose.Amount));

    /// <summary>A level with its number on the sheet.</summary>
    /// <param name="index">Its place from 0.</param>
    /// <param name="level">The level.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Numbered(int index, Level level, CultureInfo culture) => Text("LevelNumbered", culture, index + 1, level.Name, Text("Dose" + level.Dose.Kind, culture, level.Dose.Amount));

    /// <summary>Things in a row, the last joined by a word.</summary>
    /// <param name="items">One or more.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Listed(IEnumerable<string> items, CultureInfo culture)
    {
        var all = items.ToList();
        return all.Count < 2 ? string.Concat(all) : Text("ListedLast", culture, string.Join(", ", all.SkipLast(1)), all[^1]);
    }
}
