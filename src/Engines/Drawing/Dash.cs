namespace Slantwise.Engines.Drawing;

/// <summary>The rhythm of dashed lines, in widths of the line, the same on screen and paper.</summary>
public static class Dash
{
    /// <summary>The length of a dash.</summary>
    public const int OnWidths = 4;

    /// <summary>The length of the space after it.</summary>
    public const int OffWidths = 3;
}
