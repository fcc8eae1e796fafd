using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>From what a form says for certain to facts of the lesson's sheet.</summary>
/// <remarks>
/// Nothing is made of an empty field but one: where a set has a ticked cue, its other cues were left open on purpose. A set without any tick may as well
/// have been forgotten.
/// </remarks>
internal static class ScanFacts
{
    /// <summary>The facts, in the order of the items.</summary>
    /// <param name="scan">A scan whose pupil is known, or whose rows are.</param>
    /// <param name="printed">The sheet it was printed from.</param>
    /// <param name="current">The sheet the lesson uses now.</param>
    /// <returns>The facts, and the keys of items that say something the lesson's sheet no longer has.</returns>
    public static (IReadOnlyList<ScannedFact> Facts, IReadOnlySet<string> NotOnSheet) Of(Scan scan, SheetContent printed, SheetContent current)
    {
        var (facts, notOnSheet) = (new List<ScannedFact>(), new HashSet<string>());
        foreach (var item in scan.Items)
        {
            if (PupilOf(scan, item.Question) is not { } pupilId || !SaysSomething(item, scan)) continue;
            if (TaskOf(item, printed, current) is { } task && FactOf(item, task, scan, printed.Predicts) is { } fact)
            {
                var set = fact is TeacherCheck ? WatchedSet(item, scan, current) : item.Question.SetNumber;
                facts.Add(new ScannedFact(item.Key, pupilId, task.Now.TaskId, set, fact is Trial ? item.Question.Number : null, fact));
            }
            else notOnSheet.Add(item.Key);
        }
        return (facts, notOnSheet);
    }

    /// <summary>Whether two facts of one slot say the same: paper says nothing of a reason in words, nor of seconds nobody read.</summary>
    public static bool IsSame(EntryFact held, EntryFact onPaper) => (held, onPaper) switch
    {
        (Decision a, Decision b) => a.Next == b.Next,
        (Trial a, Trial { HeldS: null } b) => a.IsSuccess == b.IsSuccess,
        (TeacherCheck a, TeacherCheck b) => a.IsMet == b.IsMet,
        _ => held == onPaper,
    };

    /// <summary>A fact as the value of an item; none for one that no item says.</summary>
    public static decimal? ValueOf(EntryFact fact, SheetTask? task) => fact switch
    {
        Choice choice => task is null ? null : Number(task, choice.LevelId),
        Prediction { SuccessCount: { } count } => count,
        Prediction { HoldS: { } holdS } => (decimal)holdS,
        Trial trial => trial.IsSuccess ? 1 : 0,
        CueTick tick => tick.IsTicked ? 1 : 0,
        Decision decision => (int)decision.Next,
        TeacherCheck check => check.IsMet ? 1 : 0,
        _ => null,
    };

    /// <summary>The pupil a field is about; none where nobody has said, and for the row of one who is not here any more.</summary>
    public static Guid? PupilOf(Scan scan, SheetField field)
    {
        if (field.Kind is not (SheetFieldKind.TeacherMet or SheetFieldKind.TeacherSet)) return scan.IsObservation ? null : scan.PupilId;
        var row = field.SetNumber;
        return row >= 1 && row <= scan.RowPupils.Count && scan.RowPupils[row - 1] != Guid.Empty ? scan.RowPupils[row - 1] : null;
    }

    private static bool SaysSomething(ScanItem item, Scan scan) => item.Question.Kind switch
    {
        // They go into their trial.
        SheetFieldKind.Seconds => false,
        // Into the row's checks, which wait for it: a check of another set answers another question.
        SheetFieldKind.TeacherSet => false,
        SheetFieldKind.TeacherMet => item.Settled is not null && RowSet(item, scan) is not { IsWaiting: true },
        SheetFieldKind.Cue => item.Settled == 1 || (!item.IsWaiting && HasTick(scan, item)),
        SheetFieldKind.Held => item.Settled is not null || (!item.IsWaiting && SecondsOf(item, scan) is not null && ChoiceOf(item, scan) is not null),
        _ => item.Settled is not null,
    };

    private static ScanItem? RowSet(ScanItem check, Scan scan) => scan.Items.FirstOrDefault(
        i => i.Question.Kind == SheetFieldKind.TeacherSet && i.Question.TaskNumber == check.Question.TaskNumber && i.Question.SetNumber == check.Question.SetNumber);

    private static int? WatchedSet(ScanItem check, Scan scan, SheetContent current) =>
        RowSet(check, scan) is { } set ? (int?)set.Settled : current.SetCount == 1 ? 1 : null;

    private static bool HasTick(Scan scan, ScanItem cue) => scan.Items.Any(
        i => i.Question.Kind == SheetFieldKind.Cue && i.Question.TaskNumber == cue.Question.TaskNumber && i.Question.SetNumber == cue.Question.SetNumber && i.Settled == 1);

    private static decimal? SecondsOf(ScanItem trial, Scan scan) =>
        scan.Items.FirstOrDefault(i => i.Question == trial.Question with { Kind = SheetFieldKind.Seconds })?.Answer?.Value;

    private static decimal? ChoiceOf(ScanItem trial, Scan scan) => scan.Items.FirstOrDefault(
        i => i.Question.Kind == SheetFieldKind.Level && i.Question.TaskNumber == trial.Question.TaskNumber && i.Question.SetNumber == trial.Question.SetNumber)?.Settled;

    private static (SheetTask Then, SheetTask Now)? TaskOf(ScanItem item, SheetContent printed, SheetContent current)
    {
        if (item.Question.TaskNumber < 1 || item.Question.TaskNumber > printed.Tasks.Count) return null;
        var then = printed.Tasks[item.Question.TaskNumber - 1];
        return current.Tasks.FirstOrDefault(t => t.TaskId == then.TaskId) is { } now ? (then, now) : null;
    }

    private static EntryFact? FactOf(ScanItem item, (SheetTask Then, SheetTask Now) task, Scan scan, PredictionKind predicts) => item.Question.Kind switch
    {
        SheetFieldKind.Level => LevelOf(item.Settled!.Value, task) is { } level ? new Choice(level.Id) : null,
        SheetFieldKind.Predicted => predicts == PredictionKind.HoldS ? new Prediction(HoldS: (double)item.Settled!.Value) : new Prediction((int)item.Settled!.Value),
        SheetFieldKind.Held => TrialOf(item, task, scan),
        SheetFieldKind.Cue => CueOf(item, task) is { } cue ? new CueTick(cue, item.Settled == 1) : null,
        SheetFieldKind.Next => Enum.IsDefined((NextLevel)(int)item.Settled!.Value) ? new Decision((NextLevel)(int)item.Settled.Value) : null,
        // On paper the teacher looks at the pupil and not at the pupil's sheet.
        SheetFieldKind.TeacherMet => CueOf(item, task) is { } cue ? new TeacherCheck(cue, item.Settled == 1, IsBlind: true) : null,
        _ => null,
    };

    private static Trial? TrialOf(ScanItem item, (SheetTask Then, SheetTask Now) task, Scan scan)
    {
        var heldS = SecondsOf(item, scan);
        if (item.Settled is { } marked) return new Trial(marked == 1, (double?)heldS);
        // Timed and not marked: whether it was enough is the chosen level's to say.
        return ChoiceOf(item, scan) is { } number && LevelOf(number, task) is { Dose: { Kind: DoseKind.HoldS } dose }
            ? new Trial(heldS >= dose.Amount, (double?)heldS)
            : null;
    }

    private static Level? LevelOf(decimal number, (SheetTask Then, SheetTask Now) task)
    {
        if (number < 1 || number > task.Then.Levels.Count) return null;
        var id = task.Then.Levels[(int)number - 1].Id;
        return task.Now.Levels.FirstOrDefault(l => l.Id == id);
    }

    // A cue is its words: in another version it may have another number, or be gone.
    private static int? CueOf(ScanItem item, (SheetTask Then, SheetTask Now) task)
    {
        var number = item.Question.Number;
        if (number < 1 || number > task.Then.Cues.Count) return null;
        for (var i = 0; i < task.Now.Cues.Count; i++)
        {
            if (task.Now.Cues[i] == task.Then.Cues[number - 1]) return i + 1;
        }
        return null;
    }

    private static decimal? Number(SheetTask task, Guid levelId)
    {
        for (var i = 0; i < task.Levels.Count; i++)
        {
            if (task.Levels[i].Id == levelId) return i + 1;
        }
        return null;
    }
}
