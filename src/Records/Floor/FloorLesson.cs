namespace Slantwise.Records.Floor;

/// <summary>That a lesson is open for devices: how they join, and what every screen shows.</summary>
public sealed record FloorLesson
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson; it is opened once, and may be closed and opened again.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>What pupils type to join, six characters of <see cref="JoinCode.Alphabet"/>.</summary>
    public required string Code { get; init; }

    /// <summary>The code joins devices up to here, UTC; those that have joined stay.</summary>
    public required DateTimeOffset CodeUntil { get; init; }

    /// <summary>When it was opened, UTC.</summary>
    public required DateTimeOffset OpenedAt { get; init; }

    /// <summary>When the teacher ended it, UTC; none while it goes on. Entries made before are still taken.</summary>
    public DateTimeOffset? ClosedAt { get; init; }

    /// <summary>Since when every screen says stop, UTC; none where nobody called it.</summary>
    public DateTimeOffset? StoppedAt { get; init; }

    /// <summary>When the countdown reaches 0, UTC; none where none runs.</summary>
    public DateTimeOffset? CountdownUntil { get; init; }
}
