using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Simulation;

/// <summary>A lesson to be simulated.</summary>
public sealed record SimulatedLesson
{
    /// <summary>The lesson; its date decides which restrictions hold.</summary>
    public required Lesson Lesson { get; init; }

    /// <summary>What is on its sheet.</summary>
    public required SheetContent Content { get; init; }

    /// <summary>When it begins, UTC. Sets lie between 8 and 48 minutes after, corrections from 50 minutes after.</summary>
    public required DateTimeOffset StartsAt { get; init; }

    /// <summary>The share of pupils, first in the plan's order, whose sheets were typed in. The register is typed for all.</summary>
    public double TypedFraction { get; init; } = 1;
}
