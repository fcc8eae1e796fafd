using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Words;

namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>What a proposed level is called until a teacher says it better: the words of the places it stands on.</summary>
public static class LadderNames
{
    /// <summary>A name for a level.</summary>
    /// <param name="design">The task, with the levels it has.</param>
    /// <param name="level">The level, proposed or not.</param>
    /// <param name="words">The task's words in one language.</param>
    /// <returns>
    /// The name of a level that moves in the same way, where the task has one: a dose stands beside a name, never in it. Else the values that are words, and numbers
    /// with their factor's name; the task's name where all there is are doses. 1 to 80 characters.
    /// </returns>
    public static string Of(TaskDesign design, DesignedLevel level, TaskWords words)
    {
        var own = design.Levels.Select((l, i) => (l, i)).Where(l => l.l.Id == level.Id || design.Moved(l.l, level).All(f => f.Dose is not null) && design.IsOnGrid(l.l))
            .OrderByDescending(l => l.l.Id == level.Id).Select(l => words.Levels.ElementAtOrDefault(l.i)).FirstOrDefault(n => !string.IsNullOrWhiteSpace(n));
        if (own is not null) return own;
        var culture = CultureInfo.GetCultureInfo(words.Language);
        var parts = design.Factors.Where(f => f.Dose is null).OrderBy(f => f.Role)
            .Select(f => level.ValueOf(f) is not { } at ? "" : at.Amount is null
                ? TaskTerms.Of(f, at, words, culture)
                : LadderWords.Named(TaskTerms.Of(f, words, culture), LadderWords.Of(f, at, words, culture), culture))
            .Where(part => part.Length > 0);
        var name = string.Join(", ", parts);
        if (name.Length == 0) name = words.Name;
        name = name.Length > Limits.NameLength ? name[..Limits.NameLength].TrimEnd(',', ' ') : name;
        return name.Length == 0 ? name : char.ToUpper(name[0], culture) + name[1..];
    }
}
