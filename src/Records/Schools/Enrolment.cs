namespace Slantwise.Records.Schools;

/// <summary>That a pupil belongs to a class.</summary>
public sealed record Enrolment
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>The pupil.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>Whether the pupil is in the class now; one who left keeps the evidence and gets no sheets.</summary>
    public bool IsCurrent { get; init; } = true;
}
