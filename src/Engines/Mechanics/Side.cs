namespace Slantwise.Engines.Mechanics;

/// <summary>The performer's own left and right.</summary>
public enum Side
{
    /// <summary>A segment in the middle.</summary>
    Middle,

    /// <summary>The performer's left, towards +Y.</summary>
    Left,

    /// <summary>The performer's right, towards −Y.</summary>
    Right,
}
