using System.Collections.Immutable;
using Slantwise.Records.Checks;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>How a cell takes keys. The page carries it beside the cell, so that a key is answered without asking the server.</summary>
/// <param name="Advance">A regular expression: a text that matches it is complete, and the next cell takes over. Empty for a cell that is left by hand.</param>
/// <param name="HandsOn">Letters that belong to the decision: typed here, they land there. Empty for the decision and the reason.</param>
/// <param name="Toggle">What the space bar makes of a text; a text that is not here is complete, and space moves on. Null where space is text.</param>
/// <param name="InputMode">The keyboard a touch screen should show: "numeric", "decimal" or "text".</param>
/// <param name="LengthLimit">The most characters it takes.</param>
public sealed record CellTyping(
    string Advance, string HandsOn, ImmutableSortedDictionary<string, string>? Toggle, string InputMode, int LengthLimit)
{
    private static readonly ImmutableSortedDictionary<string, string> NoToggle = ImmutableSortedDictionary<string, string>.Empty;

    private static readonly ImmutableSortedDictionary<string, string> Marks =
        NoToggle.Add("", "1").Add("1", "0").Add("0", "1");

    private static readonly ImmutableSortedDictionary<string, string> MarksAmongSeconds =
        NoToggle.Add("", "+").Add("+", "0").Add("0", "+");

    /// <summary>How a cell takes keys.</summary>
    /// <param name="cell">A cell of the sheet.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="isTimed">Whether the task's trials are being typed as seconds.</param>
    /// <param name="letters">The letters of the page's language.</param>
    public static CellTyping Of(GridCell cell, SheetContent sheet, bool isTimed, ResultLetters letters) => cell.Kind switch
    {
        CellKind.Level => new("^[0-9]$", letters.Decisions, NoToggle, "numeric", 2),
        CellKind.Prediction when sheet.Predicts == PredictionKind.HoldS => new("", letters.Decisions, NoToggle, "decimal", 6),

        // With ten trials a 1 may be the start of 10, so it waits to be left by hand.
        CellKind.Prediction => new(sheet.TrialCount < 10 ? "^[0-9]$" : "^([02-9]|1[0-9])$", letters.Decisions, NoToggle, "numeric", 2),
        CellKind.Trial when isTimed => new("^[+-]$", letters.Decisions, MarksAmongSeconds, "decimal", 6),
        CellKind.Trial => new("^[01+-]$", letters.Decisions, Marks, "decimal", 6),
        CellKind.Cues => new(AllCues(sheet.Tasks[cell.TaskNumber - 1].Cues.Count), letters.Decisions, NoToggle, "text", 12),
        CellKind.Decision => new($"^[{letters.Decisions}{letters.Decisions.ToUpperInvariant()}]$", "", NoToggle, "text", 1),
        _ => new("", "", null, "text", Limits.SentenceLength),
    };

    private static string AllCues(int cueCount) =>
        $"^([0-]|{string.Concat(Enumerable.Range(1, cueCount).Select(cue => $"(?=.*{cue})"))}.+)$";
}
