namespace Slantwise.Engines.Mechanics;

/// <summary>How a joint has come to its end.</summary>
public enum JointStopKind
{
    /// <summary>At the least of its range.</summary>
    Least,

    /// <summary>At the most of its range.</summary>
    Most,

    /// <summary>A knee or an elbow that is straight, so that the limb can reach no further.</summary>
    Straight,
}
