namespace Slantwise.Records.Scans.Intake;

/// <summary>How a pile is taken in.</summary>
public sealed record IntakeOptions
{
    /// <summary>The lesson all pages should belong to; none to let each page's code say. Pages of another are put aside.</summary>
    public Guid? LessonId { get; init; }

    /// <summary>Whether only to say what would be done: nothing is stored.</summary>
    public bool IsDryRun { get; init; }
}
