namespace Slantwise.Engines.Drawing;

/// <summary>Which part of a text stands at its anchor.</summary>
public enum TextAnchor
{
    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
