using System.Collections.Concurrent;
using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Records.Floor.Bundles;

/// <summary>The library's postures as bundles draw and describe them. A class joins within a minute with the same few figures, so they are kept once made.</summary>
internal static class BundleDrawings
{
    // Of 12.6 kB each, as text of two bytes a letter: 25 MB at most.
    private const int MostDrawings = 1000;

    private static readonly ConcurrentDictionary<string, SettledPosture?> Settled = new(StringComparer.Ordinal);
    private static readonly ConcurrentDictionary<(string Key, string Language), string> Descriptions = new();
    private static readonly ConcurrentDictionary<(string Key, FigureOptions Options), string> Drawings = new();

    /// <summary>A posture on the floor; none where the library has no such posture.</summary>
    public static SettledPosture? Find(string key) => PostureLibrary.Find(key) is { } posture ? Settled.GetOrAdd(key, _ => posture.Settle()) : null;

    /// <summary>A posture of the library in words.</summary>
    public static string Describe(string key, CultureInfo language) =>
        Descriptions.GetOrAdd((key, language.TwoLetterISOLanguageName), _ => PostureDescription.Of(Find(key)!, language));

    /// <summary>A posture of the library as a drawing. Its words stand beside it, not in it: those change with the language, the drawing does not.</summary>
    public static string Draw(string key, FigureOptions options)
    {
        // Which sheets are in use changes over the year: what is in use now is soon there again.
        if (Drawings.Count >= MostDrawings) Drawings.Clear();
        return Drawings.GetOrAdd((key, options), _ => SvgWriter.Write(PostureFigure.Of(Find(key)!, options, "").Scene));
    }
}
