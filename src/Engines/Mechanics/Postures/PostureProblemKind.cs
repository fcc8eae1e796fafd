namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>What can be wrong in a posture's text.</summary>
public enum PostureProblemKind
{
    /// <summary>The text is not JSON.</summary>
    NotJson,

    /// <summary>Something needed is missing.</summary>
    Missing,

    /// <summary>A name that means nothing here.</summary>
    UnknownName,

    /// <summary>A value of the wrong kind: words where a number is needed.</summary>
    WrongKind,

    /// <summary>An angle beyond what the joint can do.</summary>
    BeyondLimit,

    /// <summary>The contacts cannot touch the floor together.</summary>
    CannotTouch,
}
