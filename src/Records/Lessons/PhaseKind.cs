namespace Slantwise.Records.Lessons;

/// <summary>The time categories of systematic lesson observation.</summary>
public enum PhaseKind
{
    /// <summary>Neither instruction nor activity: registers, equipment, rules.</summary>
    Management = 1,

    /// <summary>Moving between tasks, groups or stations.</summary>
    Transition = 2,

    /// <summary>Receiving information, a demonstration included.</summary>
    Instruction = 3,

    /// <summary>Most pupils practise.</summary>
    Activity = 4,

    /// <summary>Most pupils wait.</summary>
    Waiting = 5,
}
