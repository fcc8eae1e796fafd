namespace Slantwise.Records.Sheets;

/// <summary>A task sheet the teacher works on; what is printed or opened is one of its versions.</summary>
public sealed record Sheet
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The sheet's id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The name in the teacher's list, 1 to 80 characters.</summary>
    public required string Name { get; init; }

    /// <summary>The working copy. Lessons use frozen versions, so editing this changes no printed sheet.</summary>
    public required SheetContent Draft { get; init; }

    /// <summary>The highest frozen version; 0 before the first.</summary>
    public int LatestVersion { get; init; }
}
