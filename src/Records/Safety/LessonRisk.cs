namespace Slantwise.Records.Safety;

/// <summary>A lesson's risk page as far as the teacher wrote it; everything else is proposed anew from the tasks.</summary>
public sealed record LessonRisk
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The lesson; one page each.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>What the teacher wrote.</summary>
    public required RiskNotes Notes { get; init; }
}
