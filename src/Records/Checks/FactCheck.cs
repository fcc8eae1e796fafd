using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Checks;

/// <summary>What can be wrong with the value of a fact, once its pupil, task, set and trial are known to be there.</summary>
internal static class FactCheck
{
    public static void Add(List<Finding> findings, EntryFact fact, SheetContent? sheet, SheetTask? task, object where, bool isFromFile)
    {
        switch (fact)
        {
            case Choice choice when task is not null && task.Levels.All(l => l.Id != choice.LevelId):
                findings.Add(Finding.Refused("EntryLevelUnknown", where, task.Levels.Count));
                break;
            case Prediction prediction when sheet is not null:
                AddPrediction(findings, prediction, sheet, where, isFromFile);
                break;
            case Trial { HeldS: { } heldS } when !IsHold(heldS):
                findings.Add(Finding.Refused("EntryHeldOutside", where, heldS, Limits.HoldS));
                break;
            case CueTick tick when task is not null:
                AddCue(findings, tick.CueNumber, task, where);
                break;
            case TeacherCheck check when task is not null:
                AddCue(findings, check.CueNumber, task, where);
                break;
            case Decision decision:
                if (!Enum.IsDefined(decision.Next)) findings.Add(Finding.Refused("EntryValueUnknown", where));
                TextCheck.Add(findings, decision.Reason, Limits.SentenceLength, "EntryTextTooLong", where);
                break;
            case Visit visit:
                if (!Enum.IsDefined(visit.Topic) || !Enum.IsDefined(visit.Form)) findings.Add(Finding.Refused("EntryValueUnknown", where));
                TextCheck.Add(findings, visit.Note, Limits.SentenceLength, "EntryTextTooLong", where);
                break;
            case EngagementScan scan when scan.PresentCount is < 1 or > Limits.PresentCount || scan.EngagedCount < 0 || scan.EngagedCount > scan.PresentCount:
                findings.Add(Finding.Refused("EntryScanOutside", where, scan.EngagedCount, scan.PresentCount, Limits.PresentCount));
                break;
            case Note note when string.IsNullOrWhiteSpace(note.Text):
                findings.Add(Finding.Refused("EntryNoteEmpty", where));
                break;
            case Note note:
                TextCheck.Add(findings, note.Text, Limits.SentenceLength, "EntryTextTooLong", where);
                break;
            case PhaseMark mark when !Enum.IsDefined(mark.Kind):
                findings.Add(Finding.Refused("EntryValueUnknown", where));
                break;
        }
    }

    public static bool IsHold(double heldS) => heldS is >= 0 and <= Limits.HoldS;

    private static void AddCue(List<Finding> findings, int cueNumber, SheetTask task, object where)
    {
        if (cueNumber < 1 || cueNumber > task.Cues.Count) findings.Add(Finding.Refused("EntryCueUnknown", where, cueNumber, task.Cues.Count));
    }

    private static void AddPrediction(List<Finding> findings, Prediction prediction, SheetContent sheet, object where, bool isFromFile)
    {
        if (prediction.SuccessCount is null == prediction.HoldS is null) findings.Add(Finding.Refused("EntryPredictionEmpty", where));
        if (prediction.SuccessCount is < 0) findings.Add(Finding.Refused("EntryPredictionNegative", where, prediction.SuccessCount, sheet.TrialCount));
        if (prediction.SuccessCount > sheet.TrialCount)
        {
            var severity = isFromFile ? FindingSeverity.Refused : FindingSeverity.Flagged;
            findings.Add(new Finding(severity, "EntryPredictionAboveTrials", where, prediction.SuccessCount, sheet.TrialCount));
        }
        if (prediction.HoldS is { } heldS && !IsHold(heldS)) findings.Add(Finding.Refused("EntryHeldOutside", where, heldS, Limits.HoldS));
    }
}
