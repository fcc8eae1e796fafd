namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>What can be said about a picture, its errors taken in.</summary>
public enum MarkedVerdict
{
    /// <summary>Held, and the errors would not change that: a chance of 97.5 % or more.</summary>
    Held,

    /// <summary>Too close to call.</summary>
    TooClose,

    /// <summary>Not held by these contacts alone, and the errors would not change that: a chance of 2.5 % or less.</summary>
    NotHeld,
}
