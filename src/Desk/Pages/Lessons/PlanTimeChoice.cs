using System.Globalization;
using System.Web;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Records.Planning;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>What is tried on the page of time and mats, as its address says it.</summary>
/// <param name="Planning">What is tried; nothing where something lies outside its range.</param>
/// <param name="IsOutside">Whether something was given that cannot be tried.</param>
public sealed record PlanTimeChoice(PlanningChoice Planning, bool IsOutside)
{
    /// <summary>The name of who writes, in the address.</summary>
    public const string Writer = "writer";

    /// <summary>The name that says something is tried, even where every field is empty: without it, what the lesson keeps is shown.</summary>
    public const string Tried = "try";

    private static readonly (string Word, Recording By)[] Writers = [("beside", Recording.PerformerBeside), ("on-mat", Recording.PerformerOnMat), ("observer", Recording.Observer)];

    /// <summary>Who can write, in the order of the page, by their words in the address.</summary>
    public static IReadOnlyList<(string Word, Recording By)> AllWriters => Writers;

    /// <summary>Reads an address; what is left empty is as planned.</summary>
    /// <param name="query">The part of the address after the question mark.</param>
    /// <param name="kept">What the lesson keeps, shown where the address tries nothing; none where it keeps nothing.</param>
    public static PlanTimeChoice Of(string query, PlanningChoice? kept = null)
    {
        var asked = HttpUtility.ParseQueryString(query);
        if (!asked.AllKeys.Any(k => k is Tried or Writer || PlanTimeInput.All.Any(i => i.Name == k)))
            return new(kept is { IsWithin: true } ? kept : PlanningChoice.Usual, false);
        var (choice, isReadable) = (PlanningChoice.Usual, true);
        foreach (var input in PlanTimeInput.All)
        {
            if (asked[input.Name] is not { Length: > 0 } text) continue;
            var style = input.IsWhole ? NumberStyles.None : NumberStyles.AllowDecimalPoint;
            if (double.TryParse(text, style, CultureInfo.InvariantCulture, out var number) && number >= input.Least && number <= input.Most) choice = input.With(choice, number);
            else isReadable = false;
        }
        if (asked[Writer] is { Length: > 0 } writer)
        {
            if (Writers.FirstOrDefault(w => w.Word == writer) is { Word: not null } known) choice = choice with { RecordedBy = known.By };
            else isReadable = false;
        }
        return isReadable && choice.IsWithin ? new(choice, false) : new(PlanningChoice.Usual, true);
    }

    /// <summary>The address's part after the question mark that tries a choice.</summary>
    /// <param name="choice">The choice; a seed of its own is not part of the page.</param>
    public static string QueryOf(PlanningChoice choice)
    {
        (string Name, string Value)[] parts = [.. PlanTimeInput.All.Select(i => (i.Name, PlanTimeInput.Text(i.Chosen(choice)))), (Writer, WordOf(choice.RecordedBy))];
        return string.Join('&', [$"{Tried}=1", .. parts.Where(p => p.Value.Length > 0).Select(p => $"{p.Name}={p.Value}")]);
    }

    /// <summary>Who writes, as the address says it; empty for nobody chosen.</summary>
    /// <param name="by">Who.</param>
    public static string WordOf(Recording? by) => by is { } one ? Writers.First(w => w.By == one).Word : "";
}
