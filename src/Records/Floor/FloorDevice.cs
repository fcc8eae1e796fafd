namespace Slantwise.Records.Floor;

/// <summary>A device that joined a lesson.</summary>
public sealed record FloorDevice
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson it joined.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The text it signs its entries with, 1 to 40 characters, made by the device and kept by it.</summary>
    public required string DeviceId { get; init; }

    /// <summary>What it is there for.</summary>
    public required FloorDeviceKind Kind { get; init; }

    /// <summary>What the teacher calls it, up to 40 characters ("Tablet 4"); at first a number in the order of joining.</summary>
    public required string Name { get; init; }

    /// <summary>The pupils it serves now. A station serves the class and names nobody here.</summary>
    public IReadOnlyList<Guid> PupilIds { get; init; } = [];

    /// <summary>Every pupil it has served in this lesson: what it wrote about them before it was freed is still taken.</summary>
    public IReadOnlyList<Guid> ServedPupilIds { get; init; } = [];

    /// <summary>Whether the teacher has locked it: its screen rests, and what it has still to deliver is taken.</summary>
    public bool IsLocked { get; init; }

    /// <summary>When it joined, UTC.</summary>
    public required DateTimeOffset JoinedAt { get; init; }

    /// <summary>When it left, having delivered everything, UTC; none before.</summary>
    public DateTimeOffset? LeftAt { get; init; }
}
