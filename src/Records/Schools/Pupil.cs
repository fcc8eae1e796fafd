namespace Slantwise.Records.Schools;

/// <summary>A pupil: a code, and a display name only if the teacher wants one. Nothing else is asked.</summary>
public sealed record Pupil
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The pupil's id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>A short code printed on sheets, 1 to 12 letters, digits or hyphens, unlike any other in the school.</summary>
    public required string Code { get; init; }

    /// <summary>What the pupil is called, up to 60 characters; none where only codes are used.</summary>
    public string? DisplayName { get; init; }

    /// <summary>The id the roster file gives this pupil; none for a pupil added by hand.</summary>
    public string? RosterKey { get; init; }

    /// <summary>What to show: the display name, or the code where there is none.</summary>
    public string Label => string.IsNullOrWhiteSpace(DisplayName) ? Code : DisplayName;
}
