namespace Slantwise.Records.Schools;

/// <summary>A teaching group.</summary>
public sealed record SchoolClass
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The class's id within its school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The name the teacher uses ("7B"), 1 to 60 characters, unlike any other class of the school.</summary>
    public required string Name { get; init; }

    /// <summary>The id the roster file gives this class; none for a class made by hand.</summary>
    public string? RosterKey { get; init; }

    /// <summary>The last day its records are kept; none when the teacher has not set one.</summary>
    public DateOnly? KeepUntil { get; init; }
}
