namespace Slantwise.Records.Postures;

/// <summary>Which part of a print a side of the base runs along.</summary>
public enum PrintEnd
{
    /// <summary>The end the print points to: toes, fingertips.</summary>
    Front,

    /// <summary>The other end: heel, heel of the hand.</summary>
    Back,

    /// <summary>A long side, or no one end.</summary>
    Side,
}
