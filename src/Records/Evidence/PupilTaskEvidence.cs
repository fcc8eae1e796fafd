namespace Slantwise.Records.Evidence;

/// <summary>What one pupil's entries say about one task.</summary>
public sealed record PupilTaskEvidence
{
    /// <summary>The task.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>Its number in this evidence's list of tasks, from 1.</summary>
    public required int TaskNumber { get; init; }

    /// <summary>The sets in order of lesson and set; never empty.</summary>
    public required IReadOnlyList<SetEvidence> Sets { get; init; }

    /// <summary>Per level chosen, easier ones of the sheet first, trials without a level last.</summary>
    public required IReadOnlyList<PupilLevelEvidence> Levels { get; init; }

    /// <summary>The longest hold; none where nobody timed and no hold reached its dose.</summary>
    public BestHold? BestHold { get; init; }

    /// <summary>Predictions against what came, over all sets.</summary>
    public required PredictionEvidence Predictions { get; init; }

    /// <summary>The same lesson by lesson, earliest first.</summary>
    public required IReadOnlyList<LessonPredictions> PredictionsByLesson { get; init; }

    /// <summary>Decisions beside the sets they followed.</summary>
    public required DecisionEvidence Decisions { get; init; }

    /// <summary>Different levels tried.</summary>
    public required int TriedLevelCount { get; init; }

    internal static PupilTaskEvidence Of(Guid taskId, int taskNumber, IReadOnlyList<SetEvidence> sets) => new()
    {
        TaskId = taskId,
        TaskNumber = taskNumber,
        Sets = sets,
        Levels = PupilLevelEvidence.Of(sets),
        BestHold = BestHold.Of(sets),
        Predictions = PredictionEvidence.Of(sets),
        PredictionsByLesson = LessonPredictions.Of(sets),
        Decisions = DecisionEvidence.Of(sets),
        TriedLevelCount = sets.Where(s => s.LevelId is not null && s.Trials.Count > 0).Select(s => s.LevelId).Distinct().Count(),
    };
}
