namespace Slantwise.Records.Safety;

/// <summary>An incident or a near miss, in the teacher's words. The school's own accident form comes first; no diagnosis belongs here.</summary>
public sealed record Incident
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>Its id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>What kind of thing it was.</summary>
    public required IncidentKind Kind { get; init; }

    /// <summary>The day, in the school's calendar.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>When, in minutes from midnight by the school's clock, 0 to 1439; none where nobody noted it.</summary>
    public int? MinuteOfDay { get; init; }

    /// <summary>The lesson; none where it was outside of one or nobody said.</summary>
    public Guid? LessonId { get; init; }

    /// <summary>The task being done; none where it was none.</summary>
    public Guid? TaskId { get; init; }

    /// <summary>Where, 0 to 120 characters.</summary>
    public string Place { get; init; } = "";

    /// <summary>What happened, as seen, 1 to 1000 characters.</summary>
    public required string Happened { get; init; }

    /// <summary>What was done at once, 0 to 1000 characters.</summary>
    public string Done { get; init; } = "";

    /// <summary>What will be different next time, 0 to 1000 characters.</summary>
    public string Changed { get; init; } = "";

    /// <summary>Pupils concerned; may be empty. A pupil who is erased is taken off; what the texts say stays.</summary>
    public IReadOnlyList<Guid> PupilIds { get; init; } = [];

    /// <summary>When it was first written down.</summary>
    public required DateTimeOffset WrittenAt { get; init; }
}
