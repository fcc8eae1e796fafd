using System.Globalization;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Results;

/// <summary>Reads what was typed into a cell as what should hold.</summary>
/// <param name="Slots">Where each cell's facts are.</param>
/// <param name="Letters">The letters of the page's language.</param>
public sealed record CellReader(SheetSlots Slots, ResultLetters Letters)
{
    /// <summary>Reads a text.</summary>
    /// <param name="cell">A cell of the sheet.</param>
    /// <param name="text">What was typed, trimmed; empty takes the answer back.</param>
    /// <param name="holds">What each slot holds now: a time is judged by the dose of the level chosen.</param>
    /// <param name="isTimed">Whether a bare number in a trial is seconds.</param>
    /// <returns>Changes, or a remark saying what is allowed.</returns>
    public CellReading Read(GridCell cell, string text, IReadOnlyDictionary<EntrySlot, EntryFact> holds, bool isTimed) => cell.Kind switch
    {
        CellKind.Level => Level(cell, text),
        CellKind.Prediction => Prediction(cell, text),
        CellKind.Trial => Trial(cell, text, holds, isTimed),
        CellKind.Cues => Cues(cell, text),
        CellKind.Decision => Decision(cell, text, holds),
        _ => Reason(cell, text, holds),
    };

    /// <summary>The timed trials of a set, judged again by the dose of the level chosen now.</summary>
    /// <param name="cell">Any cell of the set.</param>
    /// <param name="holds">What each slot holds now.</param>
    /// <returns>Only those whose success changes; empty where the level is no hold.</returns>
    public IReadOnlyList<SlotChange> Judged(GridCell cell, IReadOnlyDictionary<EntrySlot, EntryFact> holds)
    {
        if (HoldDose(cell, holds) is not { } dose) return [];
        return [.. Enumerable.Range(1, Slots.Sheet.TrialCount)
            .Select(trial => Slots.Trial(cell, trial))
            .Where(slot => holds.GetValueOrDefault(slot) is Trial { HeldS: { } heldS } trial && trial.IsSuccess != Reached(heldS, dose))
            .Select(slot => new SlotChange(slot, (Trial)holds[slot] with { IsSuccess = !((Trial)holds[slot]).IsSuccess }))];
    }

    private CellReading Level(GridCell cell, string text)
    {
        var slot = Slots.Choice(cell);
        if (text.Length == 0) return Put(slot, null);
        var levels = Slots.TaskOf(cell).Levels;
        return Whole(text) is { } number && number >= 1 && number <= levels.Count
            ? Put(slot, new Choice(levels[number - 1].Id))
            : CellReading.Refused("LevelNotOnSheet", text, levels.Count);
    }

    private CellReading Prediction(GridCell cell, string text)
    {
        var slot = Slots.Prediction(cell);
        if (text.Length == 0) return Put(slot, null);
        if (Slots.Sheet.Predicts == PredictionKind.HoldS)
        {
            return Seconds(text) is { } holdS
                ? Put(slot, new Prediction(null, holdS))
                : CellReading.Refused("PredictionNotSeconds", text, Limits.HoldS);
        }
        // A count above the trials is what some pupils write: it is taken, and the sheet's checks point it out.
        return text.Length <= 2 && Whole(text) is { } count
            ? Put(slot, new Prediction(count, null))
            : CellReading.Refused("PredictionNotCount", text, Slots.Sheet.TrialCount);
    }

    private CellReading Trial(GridCell cell, string text, IReadOnlyDictionary<EntrySlot, EntryFact> holds, bool isTimed)
    {
        var slot = Slots.Trial(cell, cell.TrialNumber);
        switch (text)
        {
            case "": return Put(slot, null);
            case "0" or "-": return Put(slot, new Trial(false));
            case "+": return Put(slot, new Trial(true));
            case "1" when !isTimed: return Put(slot, new Trial(true));
        }
        var hasHold = Slots.TaskOf(cell).Levels.Any(level => level.Dose.Kind == DoseKind.HoldS);
        if (!hasHold || Seconds(text) is not { } heldS)
        {
            return hasHold ? CellReading.Refused("TrialNotSeconds", text, Limits.HoldS) : CellReading.Refused("TrialNotMark", text);
        }
        if (!holds.ContainsKey(Slots.Choice(cell))) return CellReading.Refused("TimeNeedsLevel", text);
        return HoldDose(cell, holds) is { } dose
            ? Put(slot, new Trial(Reached(heldS, dose), heldS))
            : CellReading.Refused("TimeNeedsHold", text);
    }

    private CellReading Cues(GridCell cell, string text)
    {
        if (text.Length == 0) return new([.. Slots.Cues(cell).Select(slot => new SlotChange(slot, null))]);
        var cueCount = Slots.TaskOf(cell).Cues.Count;
        var numbers = text.Where(c => c is not (' ' or ',')).Select(c => char.IsAsciiDigit(c) ? c - '0' : -1).ToHashSet();
        if (text is "0" or "-") numbers = [];
        else if (numbers.Any(number => number < 1 || number > cueCount)) return CellReading.Refused("CueNotOnSheet", text, cueCount);
        return new([.. Slots.Cues(cell).Select(slot =>
            new SlotChange(slot, new CueTick(slot.CueNumber!.Value, numbers.Contains(slot.CueNumber.Value))))]);
    }

    private CellReading Decision(GridCell cell, string text, IReadOnlyDictionary<EntrySlot, EntryFact> holds)
    {
        var slot = Slots.Decision(cell);
        if (text.Length == 0) return Put(slot, null);
        var reason = holds.GetValueOrDefault(slot) is Decision held ? held.Reason : "";
        return Letters.Next(text) is { } next
            ? Put(slot, new Decision(next, reason))
            : CellReading.Refused("DecisionNotLetter", text, Letters.Same, Letters.Harder, Letters.Easier);
    }

    private CellReading Reason(GridCell cell, string text, IReadOnlyDictionary<EntrySlot, EntryFact> holds)
    {
        var slot = Slots.Decision(cell);
        if (text.Length > Limits.SentenceLength) return CellReading.Refused("ReasonTooLong", Limits.SentenceLength, text.Length);
        if (holds.GetValueOrDefault(slot) is Decision decision) return Put(slot, decision with { Reason = text });
        return text.Length == 0 ? new([]) : CellReading.Refused("ReasonNeedsDecision", text);
    }

    // Seconds as they were written: 4.2 is 4.2, not the nearest binary fraction.
    private static bool Reached(double heldS, Dose dose) => (decimal)heldS >= dose.Amount;

    private Dose? HoldDose(GridCell cell, IReadOnlyDictionary<EntrySlot, EntryFact> holds)
    {
        if (holds.GetValueOrDefault(Slots.Choice(cell)) is not Choice choice) return null;
        var level = Slots.TaskOf(cell).Levels.FirstOrDefault(l => l.Id == choice.LevelId);
        return level is { Dose: { Kind: DoseKind.HoldS } dose } ? dose : null;
    }

    private static CellReading Put(EntrySlot slot, EntryFact? fact) => new([new(slot, fact)]);

    private static int? Whole(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    // A comma and a point both start the decimals, whatever the language: stopwatches show either, and hundredths at most.
    private static double? Seconds(string text)
    {
        var number = text.TrimEnd('s').TrimEnd().Replace(',', '.');
        return double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds)
            && seconds is >= 0 and <= Limits.HoldS ? Math.Round(seconds, 2) : null;
    }
}
