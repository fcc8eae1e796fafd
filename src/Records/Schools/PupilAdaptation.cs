namespace Slantwise.Records.Schools;

/// <summary>How a task is done by one pupil, kept from lesson to lesson and printed on their sheet as part of the task. Never a reason.</summary>
public sealed record PupilAdaptation
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The pupil.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>The task; one adaptation a pupil and task.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>What to do, in pupil words, 1 to 120 characters ("One hand on the wall").</summary>
    public required string Text { get; init; }
}
