using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Ladders;

namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>A proposed level with what the teacher said about it.</summary>
/// <param name="Proposed">As the grid has it.</param>
/// <param name="Level">With the teacher's posture and demands.</param>
/// <param name="Name">Its name in the task's language.</param>
/// <param name="Basis">What its demands rest on now; none once the teacher has said them.</param>
public sealed record LadderRow(ProposedLevel Proposed, DesignedLevel Level, string Name, DemandBasis? Basis)
{
    /// <summary>Whether it is not known what it asks: it is not taken before.</summary>
    public bool IsOpen => Basis == DemandBasis.Unknown;
}
