using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Checks;

internal static class PupilSetCheck
{
    public static void Add(List<Finding> findings, PupilSet set, PupilSet? before, SheetContent sheet, IReadOnlyList<Level> offered)
    {
        var place = new SheetPlace(set.Task.TaskId, set.Task.Name, set.Number);
        AddChoice(findings, set, before, place, offered);
        AddPrediction(findings, set, sheet, place);
        AddTrials(findings, set, sheet, place);
        AddDecision(findings, set, place, offered);
    }

    /// <summary>Whether a hold reached a level's dose. Seconds as they were written: 4.2 is 4.2, not the nearest binary fraction.</summary>
    public static bool Reached(double heldS, Dose dose) => (decimal)heldS >= dose.Amount;

    private static void AddChoice(List<Finding> findings, PupilSet set, PupilSet? before, SheetPlace place, IReadOnlyList<Level> offered)
    {
        if (set.ChosenLevelId is null)
        {
            if (set.Trials.Count > 0) findings.Add(Finding.Flagged("TrialsWithoutChoice", place));
            return;
        }
        if (set.Chosen is not { } chosen)
        {
            findings.Add(Finding.Flagged("ChoiceNotOnSheet", place));
            return;
        }
        var number = EntryLookup.LevelNumber(set.Task, chosen.Id);
        if (offered.All(l => l.Id != chosen.Id)) findings.Add(Finding.Flagged("ChoiceNotOffered", place, number));
        if (before is { Decided.Next: var next, Chosen: { } last } && before.Number == set.Number - 1)
        {
            var step = number - EntryLookup.LevelNumber(set.Task, last.Id);
            var (key, fits) = next switch
            {
                NextLevel.Same => ("NextChoiceNotSame", step == 0),
                NextLevel.Harder => ("NextChoiceNotHarder", step > 0),
                NextLevel.Easier => ("NextChoiceNotEasier", step < 0),
                _ => ("", true),
            };
            if (!fits) findings.Add(Finding.Flagged(key, place, before.Number));
        }
    }

    private static void AddPrediction(List<Finding> findings, PupilSet set, SheetContent sheet, SheetPlace place)
    {
        if (set.Predicted is not { } predicted)
        {
            // Seconds cannot be predicted of a level that is not held, and a tablet does not ask for them there.
            var isAsked = sheet.Predicts != PredictionKind.Nothing && !(sheet.Predicts == PredictionKind.HoldS && set.Chosen is { Dose.Kind: not DoseKind.HoldS });
            if (isAsked && set.Trials.Count > 0) findings.Add(Finding.Flagged("PredictionMissing", place));
            return;
        }
        if (sheet.Predicts == PredictionKind.SuccessCount && predicted.SuccessCount is null) findings.Add(Finding.Flagged("PredictionNotCount", place));
        if (sheet.Predicts == PredictionKind.HoldS && predicted.HoldS is null) findings.Add(Finding.Flagged("PredictionNotHold", place));
        if (sheet.Predicts == PredictionKind.Nothing) findings.Add(Finding.Flagged("PredictionNotAsked", place));
        if (predicted.SuccessCount is { } count && (count < 0 || count > sheet.TrialCount)) findings.Add(Finding.Flagged("EntryPredictionAboveTrials", place, count, sheet.TrialCount));
        if (predicted.HoldS is { } heldS && !FactCheck.IsHold(heldS)) findings.Add(Finding.Flagged("EntryHeldOutside", place, heldS, Limits.HoldS));
    }

    private static void AddTrials(List<Finding> findings, PupilSet set, SheetContent sheet, SheetPlace place)
    {
        var successCount = set.Trials.Count(t => t.Trial.IsSuccess);
        if (successCount > sheet.TrialCount) findings.Add(Finding.Flagged("MoreSuccessesThanTrials", place, successCount, sheet.TrialCount));
        foreach (var (number, trial) in set.Trials)
        {
            var here = place with { TrialNumber = number };
            if (number < 1 || number > sheet.TrialCount) findings.Add(Finding.Flagged("EntryTrialUnknown", here, number, sheet.TrialCount));
            if (trial.HeldS is not { } heldS) continue;
            if (!FactCheck.IsHold(heldS)) findings.Add(Finding.Flagged("EntryHeldOutside", here, heldS, Limits.HoldS));
            else if (set.Chosen is { Dose: { Kind: DoseKind.HoldS } dose })
            {
                if (trial.IsSuccess && !Reached(heldS, dose)) findings.Add(Finding.Flagged("SuccessHeldTooShort", here, heldS, dose.Amount));
                if (!trial.IsSuccess && Reached(heldS, dose)) findings.Add(Finding.Flagged("FailureHeldLongEnough", here, heldS, dose.Amount));
            }
            else if (set.Chosen is not null) findings.Add(Finding.Flagged("HeldWithoutHold", here));
        }
    }

    private static void AddDecision(List<Finding> findings, PupilSet set, SheetPlace place, IReadOnlyList<Level> offered)
    {
        if (set.Decided is not { } decided) return;
        if (set.Trials.Count == 0) findings.Add(Finding.Flagged("DecisionWithoutTrials", place));
        if (set.Chosen is not { } chosen || offered.Count == 0) return;
        var number = EntryLookup.LevelNumber(set.Task, chosen.Id);
        if (decided.Next == NextLevel.Harder && chosen.Id == offered[^1].Id) findings.Add(Finding.Flagged("HarderAtHardest", place, number));
        if (decided.Next == NextLevel.Easier && chosen.Id == offered[0].Id) findings.Add(Finding.Flagged("EasierAtEasiest", place, number));
    }
}
