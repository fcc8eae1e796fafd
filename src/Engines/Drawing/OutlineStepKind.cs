namespace Slantwise.Engines.Drawing;

/// <summary>The kinds of piece an outline is made of.</summary>
public enum OutlineStepKind
{
    /// <summary>Starts a new run.</summary>
    Move,

    /// <summary>A straight piece.</summary>
    Line,

    /// <summary>A cubic Bézier curve.</summary>
    Curve,

    /// <summary>Back to where the run started.</summary>
    Close,
}
