namespace Slantwise.Records.Sheets;

/// <summary>A sheet as it was printed or opened in a lesson. It never changes.</summary>
public sealed record SheetVersion
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The sheet it is a version of.</summary>
    public required Guid SheetId { get; init; }

    /// <summary>1 for the first, one more for each that differs.</summary>
    public required int Version { get; init; }

    /// <summary>What was on it.</summary>
    public required SheetContent Content { get; init; }

    /// <summary>When it was frozen, UTC.</summary>
    public required DateTimeOffset FrozenAt { get; init; }
}
