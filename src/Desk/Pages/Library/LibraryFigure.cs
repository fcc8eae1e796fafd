using System.Collections.Concurrent;
using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Desk.Pages.Library;

/// <summary>The pictures of the library's levels, each drawn once.</summary>
public static class LibraryFigure
{
    private const double BoxMm = 30;

    private static readonly ConcurrentDictionary<(string Key, string Language), Scene?> Drawn = [];

    /// <summary>A posture's picture with words for those who do not see it.</summary>
    /// <param name="posture">Its key in the library of postures.</param>
    /// <param name="language">The reader's language.</param>
    /// <returns>None for a posture that the library does not have.</returns>
    public static Scene? Of(string posture, CultureInfo language) => Drawn.GetOrAdd((posture, language.TwoLetterISOLanguageName), _ => Draw(posture, language));

    /// <summary>A posture's picture beside words that say what it is: a screen reader passes over it.</summary>
    /// <param name="posture">Its key in the library of postures.</param>
    /// <returns>None for a posture that the library does not have.</returns>
    public static Scene? Beside(string posture) => Drawn.GetOrAdd((posture, ""), _ => Draw(posture, null));

    private static Scene? Draw(string key, CultureInfo? language)
    {
        if (PostureLibrary.Find(key) is not { } posture) return null;
        var settled = posture.Settle();
        var options = new FigureOptions(PostureFigure.SharedView([settled]), BoxMm, BoxMm);
        return PostureFigure.Of(settled, options, language is null ? "" : PostureDescription.Of(settled, language)).Scene;
    }
}
