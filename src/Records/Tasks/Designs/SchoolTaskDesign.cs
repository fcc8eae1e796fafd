namespace Slantwise.Records.Tasks.Designs;

/// <summary>The design of one of a school's own tasks, kept beside the task of the same id.</summary>
public sealed record SchoolTaskDesign
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The task's id, which is the design's.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>The factor grid, the levels and the words.</summary>
    public required TaskDesign Design { get; init; }
}
