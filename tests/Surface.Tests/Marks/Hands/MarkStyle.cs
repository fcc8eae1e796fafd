namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>How a child marks a field. All but the last two mean "this one".</summary>
internal enum MarkStyle
{
    /// <summary>A tick inside the field.</summary>
    Tick,

    /// <summary>A tick that leaves the field, up to twice its size.</summary>
    LongTick,

    /// <summary>Two strokes across each other.</summary>
    Cross,

    /// <summary>The field filled by strokes side by side.</summary>
    Disc,

    /// <summary>One half of it filled.</summary>
    Half,

    /// <summary>A loose zigzag.</summary>
    Scribble,

    /// <summary>A dot of 0.9 mm and more that is meant.</summary>
    Dot,

    /// <summary>One stroke through the field.</summary>
    Dash,

    /// <summary>A ring around the field.</summary>
    Ring,

    /// <summary>Nothing meant.</summary>
    None,

    /// <summary>A stroke through this field and its neighbour: nobody can say which is meant.</summary>
    Bridge,
}
