using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Entries;

namespace Slantwise.Desk.Pages.Results;

/// <summary>The letters a teacher types, in the language of the page.</summary>
/// <param name="Same">For the same level again.</param>
/// <param name="Harder">For a harder level.</param>
/// <param name="Easier">For an easier level.</param>
/// <param name="Absent">For a pupil who was not in the lesson.</param>
/// <param name="Seconds">Switches a task between marks and seconds.</param>
public sealed record ResultLetters(char Same, char Harder, char Easier, char Absent, char Seconds)
{
    /// <summary>The three letters of a decision, together.</summary>
    public string Decisions => $"{Same}{Harder}{Easier}";

    /// <summary>The letters of a language.</summary>
    /// <param name="language">The page's language; English where there is no translation.</param>
    public static ResultLetters For(CultureInfo language) => new(
        Letter("LetterSame", language), Letter("LetterHarder", language), Letter("LetterEasier", language),
        Letter("LetterAbsent", language), Letter("LetterSeconds", language));

    /// <summary>The letter of a decision.</summary>
    public char Of(NextLevel next) => next switch { NextLevel.Same => Same, NextLevel.Harder => Harder, _ => Easier };

    /// <summary>The decision a text names.</summary>
    /// <param name="text">Any text; one letter in either case is understood.</param>
    /// <returns>None for anything else.</returns>
    public NextLevel? Next(string text)
    {
        if (text.Length != 1) return null;
        var letter = char.ToLowerInvariant(text[0]);
        return letter == Same ? NextLevel.Same : letter == Harder ? NextLevel.Harder : letter == Easier ? NextLevel.Easier : null;
    }

    private static char Letter(string key, CultureInfo language) => ResultsWords.Text(key, language)[0];
}
