using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence;

/// <summary>A lesson's log read as sets, visits and presence: everything evidence is counted from.</summary>
internal sealed record LessonReading(LessonRecord Record, int LessonNumber)
{
    public Guid LessonId => Record.Lesson.Id;

    /// <summary>By pupil, task and set.</summary>
    public required IReadOnlyList<SetEvidence> Sets { get; init; }

    public required ILookup<Guid, VisitEvidence> VisitsByPupil { get; init; }

    public required ILookup<Guid, NoteEvidence> NotesByPupil { get; init; }

    public required IReadOnlyDictionary<Guid, Guid> AbsenceEntryIds { get; init; }

    public required IReadOnlyList<Guid> UncountedEntryIds { get; init; }

    public IReadOnlyList<SheetTask> SheetTasks => Record.Sheet?.Content.Tasks ?? [];

    public static LessonReading Of(LessonRecord record, int lessonNumber)
    {
        var current = EntryLog.Current(record.Entries.Where(e => e.LessonId == record.Lesson.Id).DistinctBy(e => e.Id));
        var inSets = current.Where(BelongsToSet).ToList();
        var sets = inSets
            .GroupBy(e => (Pupil: e.PupilId!.Value, Task: e.TaskId!.Value, Set: e.SetNumber!.Value))
            .OrderBy(g => g.Key.Pupil).ThenBy(g => g.Key.Task).ThenBy(g => g.Key.Set)
            .Select(g => SetOf(record, lessonNumber, g.Key, g.ToList()))
            .ToList();
        var visits = current.Where(e => e is { Fact: Visit, PupilId: not null }).ToList();
        var notes = current.Where(e => e is { Fact: Note, PupilId: not null }).ToList();
        var presences = current.Where(e => e is { Fact: Presence, PupilId: not null }).ToList();
        var counted = inSets.Concat(visits).Concat(notes).Concat(presences).Select(e => e.Id).ToHashSet();
        return new LessonReading(record, lessonNumber)
        {
            Sets = sets,
            VisitsByPupil = visits.ToLookup(e => e.PupilId!.Value, VisitOf),
            NotesByPupil = notes.ToLookup(e => e.PupilId!.Value, e => new NoteEvidence(e.LessonId, e.MadeAt, e.TaskId, ((Note)e.Fact).Text, e.Id)),
            AbsenceEntryIds = presences.Where(e => e.Fact is Presence { IsPresent: false }).ToDictionary(e => e.PupilId!.Value, e => e.Id),
            UncountedEntryIds = current.Where(e => !IsAboutLesson(e) && !counted.Contains(e.Id)).Select(e => e.Id).ToList(),
        };
    }

    // Of the lesson as a whole, and meant so: nothing is missing from it.
    private static bool IsAboutLesson(Entry e) => e.Fact is PhaseMark or EngagementScan || e is { Fact: Note, PupilId: null };

    private static bool BelongsToSet(Entry e) =>
        e is { PupilId: not null, TaskId: not null, SetNumber: not null }
        && e.Fact is Choice or Prediction or CueTick or Decision or TeacherCheck or Trial
        && (e.Fact is not Trial || e.TrialNumber is not null);

    private static VisitEvidence VisitOf(Entry e)
    {
        var visit = (Visit)e.Fact;
        return new VisitEvidence(e.LessonId, e.MadeAt, visit.Topic, visit.Form, visit.Note, e.Id);
    }

    private static SetEvidence SetOf(LessonRecord record, int lessonNumber, (Guid Pupil, Guid Task, int Set) key, IReadOnlyList<Entry> entries)
    {
        var task = record.Sheet?.Content.Tasks.FirstOrDefault(t => t.TaskId == key.Task);
        var choice = Fact<Choice>(entries);
        var prediction = Fact<Prediction>(entries);
        var decision = Fact<Decision>(entries);
        var trials = entries.Where(e => e.Fact is Trial).OrderBy(e => e.TrialNumber)
            .Select(e => new TrialEvidence(e.TrialNumber!.Value, ((Trial)e.Fact).IsSuccess, Possible(((Trial)e.Fact).HeldS), e.Id))
            .ToList();
        var ticks = entries.Where(e => e.Fact is CueTick).OrderBy(e => ((CueTick)e.Fact).CueNumber).ToList();
        var ticked = ticks.Select(e => (CueTick)e.Fact).Where(t => t.IsTicked).Select(t => t.CueNumber).ToList();
        var success = SuccessShare.Of(trials);
        var levelIndex = task?.Levels.ToList().FindIndex(l => l.Id == choice?.Fact.LevelId) ?? -1;
        var level = levelIndex < 0 ? null : task!.Levels[levelIndex];
        return new SetEvidence
        {
            LessonId = record.Lesson.Id,
            LessonNumber = lessonNumber,
            PupilId = key.Pupil,
            TaskId = key.Task,
            SetNumber = key.Set,
            LevelId = choice?.Fact.LevelId,
            LevelNumber = level is null ? null : levelIndex + 1,
            SheetLevelNumber = level is null ? null : levelIndex + 1,
            LevelName = level?.Name ?? "",
            Dose = level?.Dose,
            IsLevelOffered = choice is null || record.Sheet is null ? null : level is not null && IsOffered(record, key.Pupil, level),
            PredictedSuccessCount = prediction?.Fact.SuccessCount,
            PredictedHoldS = Possible(prediction?.Fact.HoldS),
            Trials = trials,
            Success = success,
            PlannedTrialCount = record.Sheet?.Content.TrialCount,
            AreCuesChecked = ticks.Count > 0,
            TickedCueNumbers = ticked,
            UntickedCueNumbers = Unticked(task?.Cues.Count ?? 0, ticks, ticked),
            Checks = ChecksOf(entries, ticks.Count > 0, ticked),
            Decision = decision?.Fact.Next,
            DecisionReason = decision?.Fact.Reason ?? "",
            Pattern = decision is null ? null : DecisionCoding.Of(success.SuccessCount, success.TrialCount, DirectionOf(decision.Fact.Next)),
            ChoiceEntryId = choice?.EntryId,
            PredictionEntryId = prediction?.EntryId,
            DecisionEntryId = decision?.EntryId,
            ImpossibleTimeEntryIds = entries
                .Where(e => e.Fact is Trial { HeldS: { } held } && Possible(held) is null || e.Fact is Prediction { HoldS: { } hold } && Possible(hold) is null)
                .OrderBy(PlaceInSet).Select(e => e.Id).ToList(),
            CueEntryIds = ticks.Select(e => e.Id).ToList(),
            EntryIds = entries.OrderBy(PlaceInSet).Select(e => e.Id).ToList(),
        };
    }

    // As a sheet is filled in, so that a corrected entry stands where the first one stood.
    private static (int Kind, int Number, int Trial) PlaceInSet(Entry e) => e.Fact switch
    {
        Choice => (0, 0, 0),
        Prediction => (1, 0, 0),
        Trial => (2, e.TrialNumber ?? 0, 0),
        CueTick tick => (3, tick.CueNumber, e.TrialNumber ?? 0),
        TeacherCheck check => (4, check.CueNumber, e.TrialNumber ?? 0),
        _ => (5, 0, 0),
    };

    // Checked when it is written; a log from elsewhere must not stop the rest from being read.
    private static double? Possible(double? timeS) => timeS is { } s && s >= 0 && double.IsFinite(s) ? s : null;

    private static bool IsOffered(LessonRecord record, Guid pupilId, Level level) =>
        Offer.LevelsFor([level], record.School.Policy, record.Restrictions.Where(r => r.PupilId == pupilId), record.Lesson.Date).Count > 0;

    // A box left empty beside ticked ones is an open cue; a set without any tick says nothing about its cues.
    private static List<int> Unticked(int cueCount, IReadOnlyList<Entry> ticks, IReadOnlyList<int> ticked) => ticks.Count == 0
        ? []
        : Enumerable.Range(1, cueCount).Union(ticks.Select(e => ((CueTick)e.Fact).CueNumber)).Except(ticked).Order().ToList();

    private static List<CheckEvidence> ChecksOf(IReadOnlyList<Entry> entries, bool areCuesChecked, IReadOnlyList<int> ticked) => entries
        .Where(e => e.Fact is TeacherCheck)
        .Select(e => (Entry: e, Check: (TeacherCheck)e.Fact))
        .OrderBy(x => x.Check.CueNumber).ThenBy(x => x.Entry.TrialNumber).ThenBy(x => x.Entry.Id)
        .Select(x => new CheckEvidence(
            x.Check.CueNumber, x.Check.IsMet, x.Check.IsBlind, areCuesChecked ? ticked.Contains(x.Check.CueNumber) : null, x.Entry.Id))
        .ToList();

    private static Answer<T>? Fact<T>(IReadOnlyList<Entry> entries) where T : EntryFact =>
        entries.LastOrDefault(e => e.Fact is T) is { } entry ? new Answer<T>((T)entry.Fact, entry.Id) : null;

    private static DecisionDirection DirectionOf(NextLevel next) => next switch
    {
        NextLevel.Harder => DecisionDirection.Harder,
        NextLevel.Easier => DecisionDirection.Easier,
        _ => DecisionDirection.Same,
    };

    private sealed record Answer<T>(T Fact, Guid EntryId);
}
