namespace Slantwise.Records.Halls;

/// <summary>A lesson in a hall.</summary>
public sealed record LessonSpace
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson; one layout each.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The hall.</summary>
    public required Guid HallId { get; init; }

    /// <summary>What lies where.</summary>
    public required HallLayout Layout { get; init; }
}
