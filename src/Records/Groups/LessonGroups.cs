namespace Slantwise.Records.Groups;

/// <summary>The groups of a lesson.</summary>
public sealed record LessonGroups
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson; one plan each.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The groups and what was wished.</summary>
    public required GroupPlan Plan { get; init; }
}
