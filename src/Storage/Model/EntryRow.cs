using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Storage.Model;

/// <summary>An entry laid flat, one column a quantity, so that SQL can count and average it.</summary>
internal sealed class EntryRow
{
    public required Guid SchoolId { get; init; }
    public required Guid Id { get; init; }
    public required Guid LessonId { get; init; }
    public Guid? PupilId { get; init; }
    public Guid? TaskId { get; init; }
    public int? SetNumber { get; init; }
    public int? TrialNumber { get; init; }

    public required EntryKind Kind { get; init; }

    /// <summary>The chosen level.</summary>
    public Guid? LevelId { get; init; }

    /// <summary>Predicted successes.</summary>
    public int? SuccessCount { get; init; }

    /// <summary>Seconds predicted, or held in a trial.</summary>
    public double? HeldS { get; init; }

    /// <summary>A trial reached its dose.</summary>
    public bool? IsSuccess { get; init; }

    /// <summary>The cue ticked or checked, from 1.</summary>
    public int? CueNumber { get; init; }

    /// <summary>The yes or no of a presence, a tick or a check.</summary>
    public bool? Flag { get; init; }

    /// <summary>A check was made before seeing the pupil's tick.</summary>
    public bool? IsBlind { get; init; }

    /// <summary>Same, harder or easier.</summary>
    public NextLevel? Decision { get; init; }

    /// <summary>What a visit was about.</summary>
    public VisitTopic? Topic { get; init; }

    /// <summary>How the teacher spoke in a visit.</summary>
    public VisitForm? Form { get; init; }

    /// <summary>The phase that began.</summary>
    public PhaseKind? Phase { get; init; }

    /// <summary>Those engaged in a look around the hall.</summary>
    public int? EngagedCount { get; init; }

    /// <summary>Those in the lesson at that look.</summary>
    public int? PresentCount { get; init; }

    /// <summary>The reason of a decision, the note of a visit or a note of its own.</summary>
    public string? Remark { get; init; }

    public required EntrySource Source { get; init; }
    public required string DeviceId { get; init; }
    public required long DeviceSequence { get; init; }
    public required DateTimeOffset MadeAt { get; init; }
    public Guid? SupersedesId { get; init; }
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The order received within the lesson, from 1, with gaps: a reader who has seen one number has seen all below it.</summary>
    public required long ReceivedOrder { get; init; }
}
