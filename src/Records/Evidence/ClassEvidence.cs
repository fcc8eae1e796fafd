using Slantwise.Engines.Statistics;

namespace Slantwise.Records.Evidence;

/// <summary>What a class's entries say on the whole: for the debrief, without names.</summary>
public sealed record ClassEvidence
{
    /// <summary>Pupils in the class now.</summary>
    public required int PupilCount { get; init; }

    /// <summary>Of them, pupils with anything written.</summary>
    public required int WrittenPupilCount { get; init; }

    /// <summary>Sets with anything written.</summary>
    public required int SetCount { get; init; }

    /// <summary>Trials.</summary>
    public required int TrialCount { get; init; }

    /// <summary>Predictions against what came, over all tasks.</summary>
    public required PredictionEvidence Predictions { get; init; }

    /// <summary>The same lesson by lesson, earliest first.</summary>
    public required IReadOnlyList<LessonPredictions> PredictionsByLesson { get; init; }

    /// <summary>Decisions by the band of the set they followed, high first.</summary>
    public required IReadOnlyList<DecisionsAfter> DecisionsAfter { get; init; }

    /// <summary>The cues left open in the largest share of the sets where they were checked; several where they tie, empty where none was left open.</summary>
    public IReadOnlyList<CueEvidence> CuesMostOftenOpen { get; init; } = [];

    /// <summary>Pupils' ticks against the teacher's checks of the same cues; nothing compared where the teacher checked none.</summary>
    public required TickAgreement TickAgreement { get; init; }

    /// <summary>The teacher's entries compared.</summary>
    public IReadOnlyList<Guid> CheckEntryIds { get; init; } = [];

    /// <summary>How the teacher spoke about decisions.</summary>
    public required LevelTalk LevelTalk { get; init; }

    internal static ClassEvidence Of(
        int pupilCount, IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<TaskEvidence> tasks,
        IReadOnlyList<SetEvidence> sets, IEnumerable<VisitEvidence> visits)
    {
        var checks = sets.SelectMany(s => s.Checks).Where(c => c.IsTickedByPupil is not null).ToList();
        return new ClassEvidence
        {
            PupilCount = pupilCount,
            WrittenPupilCount = pupils.Count(p => p.SetCount > 0),
            SetCount = sets.Count,
            TrialCount = sets.Sum(s => s.Trials.Count),
            Predictions = PredictionEvidence.Of(sets),
            PredictionsByLesson = LessonPredictions.Of(sets),
            DecisionsAfter = Evidence.DecisionsAfter.Of(sets),
            CuesMostOftenOpen = MostOftenOpen(tasks),
            TickAgreement = new TickAgreement(
                checks.Count(c => c.IsTickedByPupil == true && c.IsMet),
                checks.Count(c => c.IsTickedByPupil == true && !c.IsMet),
                checks.Count(c => c.IsTickedByPupil == false && c.IsMet),
                checks.Count(c => c.IsTickedByPupil == false && !c.IsMet)),
            CheckEntryIds = checks.Select(c => c.EntryId).ToList(),
            LevelTalk = LevelTalk.Of(visits),
        };
    }

    private static List<CueEvidence> MostOftenOpen(IReadOnlyList<TaskEvidence> tasks)
    {
        var open = tasks.SelectMany(t => t.Cues).Where(c => c.UntickedSetCount > 0).ToList();
        if (open.Count == 0) return [];
        var most = open.Max(c => (double)c.UntickedSetCount / c.CheckedSetCount);
        return open.Where(c => (double)c.UntickedSetCount / c.CheckedSetCount == most).ToList();
    }
}
