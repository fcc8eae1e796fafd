namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>How the levels of a task follow from its factor grid.</summary>
/// <remarks>Source: the three designs of the inclusion style [MosstonAshworth2008]; the rules by which levels are proposed are ours, docs/decisions/0020.</remarks>
public enum LadderKind
{
    /// <summary>One factor changes from level to level, always towards its hard end. The order is taken as given.</summary>
    Classical = 1,

    /// <summary>The key factor changes and others fill the gaps, so that something may ease where something else gets harder. The order is a hypothesis that data may contradict.</summary>
    SemiClassical = 2,

    /// <summary>Each level keeps all that the one before asked and adds something: no factor ever eases.</summary>
    Cumulative = 3,
}
