using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Evidence;

/// <summary>What one pupil wrote about one set of a task.</summary>
public sealed record SetEvidence
{
    /// <summary>The lesson.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The lesson within this evidence, from 1 for the earliest.</summary>
    public required int LessonNumber { get; init; }

    /// <summary>The pupil.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>The task.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>The set within the lesson, from 1.</summary>
    public required int SetNumber { get; init; }

    /// <summary>The level chosen; none where none was written.</summary>
    public Guid? LevelId { get; init; }

    /// <summary>The level's number in this evidence's list of the task's levels, from 1; none where none was written or it is on no sheet.</summary>
    public int? LevelNumber { get; init; }

    /// <summary>The level's number as the lesson's sheet printed it, from 1; none where none was written or it is not on the sheet.</summary>
    public int? SheetLevelNumber { get; init; }

    /// <summary>How it is done at this level; empty where no level is known.</summary>
    public string LevelName { get; init; } = "";

    /// <summary>How much makes a success; none where no level is known.</summary>
    public Dose? Dose { get; init; }

    /// <summary>Whether policy and restrictions leave this level to this pupil on the day; none where no level was written.</summary>
    public bool? IsLevelOffered { get; init; }

    /// <summary>Predicted successes; none where not predicted.</summary>
    public int? PredictedSuccessCount { get; init; }

    /// <summary>Predicted best hold; none where not predicted.</summary>
    public double? PredictedHoldS { get; init; }

    /// <summary>The trials in order of their numbers.</summary>
    public IReadOnlyList<TrialEvidence> Trials { get; init; } = [];

    /// <summary>The trials that succeeded, with n and a range.</summary>
    public required SuccessShare Success { get; init; }

    /// <summary>Trials the sheet asks of a set; none where no sheet is known.</summary>
    public int? PlannedTrialCount { get; init; }

    /// <summary>Whether any cue was ticked or left open on purpose in this set: only then an open cue says something.</summary>
    public bool AreCuesChecked { get; init; }

    /// <summary>Cues ticked, ascending, from 1.</summary>
    public IReadOnlyList<int> TickedCueNumbers { get; init; } = [];

    /// <summary>Cues of the sheet not ticked in a set where cues were checked, ascending, from 1.</summary>
    public IReadOnlyList<int> UntickedCueNumbers { get; init; } = [];

    /// <summary>What the teacher saw of the cues.</summary>
    public IReadOnlyList<CheckEvidence> Checks { get; init; } = [];

    /// <summary>What the pupil decided for the next set; none where nothing was written.</summary>
    public NextLevel? Decision { get; init; }

    /// <summary>Why, in the pupil's words; may be empty.</summary>
    public string DecisionReason { get; init; } = "";

    /// <summary>The pattern the decision makes with this set; none without a decision. Its words are <c>Pattern…</c> in the question words.</summary>
    public DecisionPattern? Pattern { get; init; }

    /// <summary>The choice's entry; none where no level was written.</summary>
    public Guid? ChoiceEntryId { get; init; }

    /// <summary>The prediction's entry; none where nothing was predicted.</summary>
    public Guid? PredictionEntryId { get; init; }

    /// <summary>The decision's entry; none where nothing was decided.</summary>
    public Guid? DecisionEntryId { get; init; }

    /// <summary>The cue ticks' entries.</summary>
    public IReadOnlyList<Guid> CueEntryIds { get; init; } = [];

    /// <summary>Entries with a time below 0 or no number at all; those times are left out.</summary>
    public IReadOnlyList<Guid> ImpossibleTimeEntryIds { get; init; } = [];

    /// <summary>All entries of the set.</summary>
    public IReadOnlyList<Guid> EntryIds { get; init; } = [];

    /// <summary>Whether all trials the sheet asks for were written: only then a predicted count can be compared.</summary>
    public bool IsComplete => Trials.Count > 0 && Trials.Count >= (PlannedTrialCount ?? 0);

    /// <summary>Predicted less actual successes; none where there is nothing to compare.</summary>
    public int? PredictionErrorCount => IsCountComparable ? PredictedSuccessCount - Success.SuccessCount : null;

    /// <summary>Predicted less actual best hold; none where there is nothing to compare.</summary>
    public double? PredictionErrorS => PredictedHoldS is { } predicted && TimedBest is { } best ? predicted - best.HeldS : null;

    internal PersonalBest? Best => PersonalBest.Of(Trials
        .Select(t => new HoldAttempt(t.HeldS, Dose is { Kind: DoseKind.HoldS, Amount: > 0 } dose ? (double)dose.Amount : null, t.IsSuccess))
        .ToList());

    // A hold that is only known to have reached the dose may have lasted longer: it cannot be compared.
    internal PersonalBest? TimedBest => Best is { IsLowerBound: false } best ? best : null;

    // A prediction above the trials is pointed out when it is written; compared, it would pass for overconfidence.
    private bool IsCountComparable => IsComplete && PredictedSuccessCount is { } predicted && predicted >= 0 && predicted <= Trials.Count;
}
