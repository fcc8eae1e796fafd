namespace Slantwise.Engines.Planning.Blocks;

/// <summary>What most pupils do, as lesson observation counts it.</summary>
/// <remarks>Source: [SiedentopTannehill2000].</remarks>
public enum TimeCategory
{
    /// <summary>Neither instruction nor activity: registers, equipment, rules.</summary>
    Management = 1,

    /// <summary>Moving between tasks, groups or stations.</summary>
    Transition = 2,

    /// <summary>Receiving information, a demonstration included.</summary>
    Instruction = 3,

    /// <summary>Practising.</summary>
    Activity = 4,

    /// <summary>Waiting.</summary>
    Waiting = 5,
}
