using Slantwise.Records.Entries;

namespace Slantwise.Storage.Model;

/// <summary>Entries to rows and back.</summary>
internal static class EntryRows
{
    public static EntryRow Of(Entry entry, DateTimeOffset receivedAt, long receivedOrder)
    {
        var fact = entry.Fact;
        return new EntryRow
        {
            SchoolId = entry.SchoolId,
            Id = entry.Id,
            LessonId = entry.LessonId,
            PupilId = entry.PupilId,
            TaskId = entry.TaskId,
            SetNumber = entry.SetNumber,
            TrialNumber = entry.TrialNumber,
            Kind = KindOf(fact),
            LevelId = (fact as Choice)?.LevelId,
            SuccessCount = (fact as Prediction)?.SuccessCount,
            HeldS = fact switch { Prediction p => p.HoldS, Trial t => t.HeldS, _ => null },
            IsSuccess = (fact as Trial)?.IsSuccess,
            CueNumber = fact switch { CueTick tick => tick.CueNumber, TeacherCheck check => check.CueNumber, _ => null },
            Flag = fact switch
            {
                Presence presence => presence.IsPresent,
                CueTick tick => tick.IsTicked,
                TeacherCheck check => check.IsMet,
                _ => null,
            },
            IsBlind = (fact as TeacherCheck)?.IsBlind,
            Decision = (fact as Decision)?.Next,
            Topic = (fact as Visit)?.Topic,
            Form = (fact as Visit)?.Form,
            Phase = (fact as PhaseMark)?.Kind,
            EngagedCount = (fact as EngagementScan)?.EngagedCount,
            PresentCount = (fact as EngagementScan)?.PresentCount,
            Remark = fact switch { Decision decision => decision.Reason, Visit visit => visit.Note, Note note => note.Text, _ => null },
            Source = entry.Source,
            DeviceId = entry.DeviceId,
            DeviceSequence = entry.DeviceSequence,
            MadeAt = entry.MadeAt,
            SupersedesId = entry.SupersedesId,
            ReceivedAt = receivedAt,
            ReceivedOrder = receivedOrder,
        };
    }

    public static Entry EntryOf(EntryRow row) => new()
    {
        SchoolId = row.SchoolId,
        Id = row.Id,
        LessonId = row.LessonId,
        PupilId = row.PupilId,
        TaskId = row.TaskId,
        SetNumber = row.SetNumber,
        TrialNumber = row.TrialNumber,
        Fact = FactOf(row),
        Source = row.Source,
        DeviceId = row.DeviceId,
        DeviceSequence = row.DeviceSequence,
        MadeAt = row.MadeAt,
        SupersedesId = row.SupersedesId,
        ReceivedAt = row.ReceivedAt,
    };

    private static EntryKind KindOf(EntryFact fact) => fact switch
    {
        Presence => EntryKind.Presence,
        Choice => EntryKind.Choice,
        Prediction => EntryKind.Prediction,
        Trial => EntryKind.Trial,
        CueTick => EntryKind.CueTick,
        Decision => EntryKind.Decision,
        TeacherCheck => EntryKind.TeacherCheck,
        Visit => EntryKind.Visit,
        PhaseMark => EntryKind.PhaseMark,
        Withdrawal => EntryKind.Withdrawal,
        EngagementScan => EntryKind.EngagementScan,
        Note => EntryKind.Note,
        _ => throw new ArgumentException($"The store has no column for a fact of the kind {fact.GetType().Name}.", nameof(fact)),
    };

    private static EntryFact FactOf(EntryRow row) => row.Kind switch
    {
        EntryKind.Presence => new Presence(row.Flag!.Value),
        EntryKind.Choice => new Choice(row.LevelId!.Value),
        EntryKind.Prediction => new Prediction(row.SuccessCount, row.HeldS),
        EntryKind.Trial => new Trial(row.IsSuccess!.Value, row.HeldS),
        EntryKind.CueTick => new CueTick(row.CueNumber!.Value, row.Flag!.Value),
        EntryKind.Decision => new Decision(row.Decision!.Value, row.Remark!),
        EntryKind.TeacherCheck => new TeacherCheck(row.CueNumber!.Value, row.Flag!.Value, row.IsBlind!.Value),
        EntryKind.Visit => new Visit(row.Topic!.Value, row.Form!.Value, row.Remark!),
        EntryKind.PhaseMark => new PhaseMark(row.Phase!.Value),
        EntryKind.Withdrawal => new Withdrawal(),
        EntryKind.EngagementScan => new EngagementScan(row.EngagedCount!.Value, row.PresentCount!.Value),
        EntryKind.Note => new Note(row.Remark!),
        _ => throw new InvalidDataException($"Entry {row.Id} is of kind {(int)row.Kind}, which this version does not know."),
    };
}
