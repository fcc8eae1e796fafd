using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>A block of a lesson while it is being typed.</summary>
public sealed class PhaseDraft
{
    /// <summary>What most pupils do in it.</summary>
    public PhaseKind Kind { get; set; } = PhaseKind.Activity;

    /// <summary>How long, in minutes; none while nothing is typed.</summary>
    public int? DurationMin { get; set; } = 10;

    /// <summary>What happens.</summary>
    public string Note { get; set; } = "";
}
