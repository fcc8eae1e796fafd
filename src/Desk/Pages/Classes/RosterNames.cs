using System.Text.RegularExpressions;
using Slantwise.Desk.Words;
using Slantwise.Records.Schools;

namespace Slantwise.Desk.Pages.Classes;

/// <summary>Whether a class's or a pupil's names can be taken.</summary>
public static partial class RosterNames
{
    /// <summary>What is wrong with a class's name.</summary>
    /// <param name="one">The class as typed.</param>
    /// <param name="classes">The school's classes, itself included or not.</param>
    /// <returns>A sentence; none if it can be taken.</returns>
    public static string? FindingOf(SchoolClass one, IEnumerable<SchoolClass> classes) =>
        one.Name.Length is 0 or > 60 ? DeskWords.Say("ClassNameWrong")
        : classes.Any(c => c.Id != one.Id && AreAlike(c.Name, one.Name)) ? DeskWords.Say("ClassNameTaken", one.Name)
        : null;

    /// <summary>What is wrong with a pupil's code or name.</summary>
    /// <param name="pupil">The pupil as typed.</param>
    /// <param name="pupils">The school's pupils, themselves included or not.</param>
    /// <returns>A sentence; none if they can be taken.</returns>
    public static string? FindingOf(Pupil pupil, IEnumerable<Pupil> pupils) =>
        !Code().IsMatch(pupil.Code) ? DeskWords.Say("CodeWrong")
        : pupils.Any(p => p.Id != pupil.Id && AreAlike(p.Code, pupil.Code)) ? DeskWords.Say("CodeTaken", pupil.Code)
        : pupil.DisplayName?.Length > 60 ? DeskWords.Say("DisplayNameWrong")
        : null;

    private static bool AreAlike(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(@"^[\p{L}\p{Nd}-]{1,12}$")]
    private static partial Regex Code();
}
