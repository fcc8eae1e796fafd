namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>What the demands of a proposed level rest on.</summary>
public enum DemandBasis
{
    /// <summary>A level of the task that moves in the same way: the same intrinsic factors, whatever the dose.</summary>
    SameMovement = 1,

    /// <summary>The posture that shows it.</summary>
    Posture = 2,

    /// <summary>Nothing: the teacher is asked.</summary>
    Unknown = 3,
}
