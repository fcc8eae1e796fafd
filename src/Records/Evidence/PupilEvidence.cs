namespace Slantwise.Records.Evidence;

/// <summary>What one pupil's entries say.</summary>
public sealed record PupilEvidence
{
    /// <summary>The pupil.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>What to call the pupil.</summary>
    public required string Label { get; init; }

    /// <summary>The tasks with entries, in this evidence's order; empty where the pupil wrote nothing.</summary>
    public IReadOnlyList<PupilTaskEvidence> Tasks { get; init; } = [];

    /// <summary>Talks with the pupil, earliest first.</summary>
    public IReadOnlyList<VisitEvidence> Visits { get; init; } = [];

    /// <summary>The teacher's notes about the pupil, earliest first.</summary>
    public IReadOnlyList<NoteEvidence> Notes { get; init; } = [];

    /// <summary>Lessons in which the pupil was marked absent, in order.</summary>
    public IReadOnlyList<Guid> AbsentLessonIds { get; init; } = [];

    /// <summary>The entries that say so.</summary>
    public IReadOnlyList<Guid> AbsenceEntryIds { get; init; } = [];

    /// <summary>Lessons with entries of others but none of this pupil, who was not marked absent.</summary>
    public IReadOnlyList<Guid> EmptyLessonIds { get; init; } = [];

    /// <summary>What in the entries does not fit together.</summary>
    public IReadOnlyList<EvidenceFlag> Flags { get; init; } = [];

    /// <summary>Sets with anything written.</summary>
    public int SetCount => Tasks.Sum(t => t.Sets.Count);
}
