using Slantwise.Engines.Drawing;

namespace Slantwise.Paper.Posters;

/// <summary>Where a shape is anchored from the left: enough to tell on which half of a poster it stands.</summary>
internal static class ShapeLeft
{
    public static double Of(Shape shape) => shape switch
    {
        Line l => Math.Min(l.X1Mm, l.X2Mm),
        Box b => b.XMm,
        Disc d => d.XMm,
        Text t => t.XMm,
        Outline o => o.Steps.Where(s => s.Kind != OutlineStepKind.Close).Min(s => s.XMm),
        _ => throw new ArgumentException($"A poster has no shape of the kind {shape.GetType().Name}.", nameof(shape)),
    };
}
