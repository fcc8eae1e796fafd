using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>Writes what holds now into cells, so that reading it back changes nothing.</summary>
/// <param name="Slots">Where each cell's facts are.</param>
/// <param name="Letters">The letters of the page's language.</param>
/// <param name="Language">The page's language.</param>
public sealed record CellText(SheetSlots Slots, ResultLetters Letters, CultureInfo Language)
{
    /// <summary>What stands for a fact this sheet has no word for, such as a level of another sheet.</summary>
    public const string Unknown = "?";

    private const string SecondsFormat = "0.###";

    /// <summary>The text of a cell.</summary>
    /// <param name="cell">A cell of the sheet.</param>
    /// <param name="holds">What each slot holds now.</param>
    /// <param name="isTimed">Whether the task's trials are shown as seconds.</param>
    /// <returns>Empty where nothing was recorded.</returns>
    public string Of(GridCell cell, IReadOnlyDictionary<EntrySlot, EntryFact> holds, bool isTimed) => cell.Kind switch
    {
        CellKind.Level => holds.GetValueOrDefault(Slots.Choice(cell)) is Choice choice ? LevelNumber(cell, choice) : "",
        CellKind.Prediction => holds.GetValueOrDefault(Slots.Prediction(cell)) is Prediction prediction ? Predicted(prediction) : "",
        CellKind.Trial => holds.GetValueOrDefault(Slots.Trial(cell, cell.TrialNumber)) is Trial trial ? Tried(trial, isTimed) : "",
        CellKind.Cues => Ticked(cell, holds),
        CellKind.Decision => holds.GetValueOrDefault(Slots.Decision(cell)) is Decision decision ? Letters.Of(decision.Next).ToString() : "",
        _ => holds.GetValueOrDefault(Slots.Decision(cell)) is Decision decision ? decision.Reason : "",
    };

    private string LevelNumber(GridCell cell, Choice choice)
    {
        var levels = Slots.TaskOf(cell).Levels;
        var number = levels.TakeWhile(level => level.Id != choice.LevelId).Count() + 1;
        return number <= levels.Count ? number.ToString(CultureInfo.InvariantCulture) : Unknown;
    }

    private string Predicted(Prediction prediction) => (Slots.Sheet.Predicts, prediction) switch
    {
        (PredictionKind.SuccessCount, { SuccessCount: { } count }) => count.ToString(CultureInfo.InvariantCulture),
        (PredictionKind.HoldS, { HoldS: { } holdS }) => holdS.ToString(SecondsFormat, Language),
        _ => Unknown,
    };

    private string Tried(Trial trial, bool isTimed) => trial switch
    {
        { HeldS: { } heldS } => Seconds(heldS, isTimed),
        { IsSuccess: true } => isTimed ? "+" : "1",
        _ => "0",
    };

    // A bare 0 or 1 is a mark, so that a time of 0 or 1 second needs its decimal.
    private string Seconds(double heldS, bool isTimed)
    {
        var text = heldS.ToString(SecondsFormat, Language);
        return text == "0" || (text == "1" && !isTimed) ? heldS.ToString("0.0", Language) : text;
    }

    private string Ticked(GridCell cell, IReadOnlyDictionary<EntrySlot, EntryFact> holds)
    {
        var ticks = Slots.Cues(cell).Select(slot => holds.GetValueOrDefault(slot)).OfType<CueTick>().ToList();
        if (ticks.Count == 0) return "";
        return ticks.Exists(tick => tick.IsTicked)
            ? string.Concat(ticks.Where(tick => tick.IsTicked).Select(tick => tick.CueNumber))
            : "0";
    }
}
