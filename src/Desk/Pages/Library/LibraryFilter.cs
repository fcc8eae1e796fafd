using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Words;

namespace Slantwise.Desk.Pages.Library;

/// <summary>What a teacher looks for in the library, as it stands in the page's address.</summary>
/// <param name="Words">Words that all have to be in the task; empty for any task.</param>
/// <param name="Pattern">The family; none for all.</param>
/// <param name="Need">What it may take; none for anything.</param>
/// <param name="Without">What no level may ask of the body.</param>
/// <param name="IsByPolicy">Whether the school's policy has to allow every level.</param>
/// <param name="HasFigure">Whether a level has to have a picture.</param>
public sealed record LibraryFilter(
    string Words, MovementPattern? Pattern, LibraryNeed? Need, IReadOnlyList<BodyDemand> Without, bool IsByPolicy, bool HasFigure)
{
    private const int WordsLength = 80;

    /// <summary>Whether it asks for anything at all.</summary>
    public bool IsEmpty => Words.Length == 0 && Pattern is null && Need is null && Without.Count == 0 && !IsByPolicy && !HasFigure;

    /// <summary>What an address asks for; what it says that is unknown is passed over.</summary>
    /// <param name="query">The address's query.</param>
    public static LibraryFilter Of(string query)
    {
        var asked = QueryHelpers.ParseQuery(query);
        string Text(string name) => asked.TryGetValue(name, out var values) ? values.ToString().Trim() : "";
        var words = Text("words");
        return new(
            words.Length > WordsLength ? words[..WordsLength] : words,
            Named<MovementPattern>(Text("pattern")),
            Named<LibraryNeed>(Text("needs")),
            asked.TryGetValue("without", out var without) ? [.. without.Select(Named<BodyDemand>).OfType<BodyDemand>().Distinct()] : [],
            Text("policy") == "1",
            Text("figure") == "1");
    }

    /// <summary>Whether a task is what is looked for.</summary>
    /// <param name="entry">A task of the library.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="language">The reader's language.</param>
    public bool Fits(LibraryEntry entry, SafetyPolicy policy, CultureInfo language)
    {
        var needs = entry.Design.Needs;
        return (Pattern is null || entry.Design.Pattern == Pattern)
            && (Need is null || LibraryNeeds.Of(entry) == Need)
            && !needs.Intersect(Without).Any()
            && (!IsByPolicy || entry.LeftBy(policy).Count == entry.Design.Levels.Count)
            && (!HasFigure || entry.Posture is not null)
            && HasWords(entry, language);
    }

    private bool HasWords(LibraryEntry entry, CultureInfo language)
    {
        if (Words.Length == 0) return true;
        var said = string.Join('\n', [entry.Words.Name, entry.Words.Purpose, TaskTerms.Of(entry.Design.Pattern, language), .. entry.Words.Cues, .. entry.Words.Levels]);
        // "equilibrio" finds "Equilibrios", "pinguino" finds "pingüino".
        return Words.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .All(word => language.CompareInfo.IndexOf(said, word, CompareOptions.IgnoreCase | CompareOptions.IgnoreNonSpace) >= 0);
    }

    private static T? Named<T>(string? name)
        where T : struct, Enum =>
        Enum.TryParse<T>(name, ignoreCase: true, out var value) && Enum.IsDefined(value) ? value : null;
}
