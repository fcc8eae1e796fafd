namespace Slantwise.Engines.Drawing;

/// <summary>A drawing made smaller or larger as a whole: lengths, lines and type.</summary>
public static class ShapeScale
{
    /// <summary>A shape scaled from the top left corner.</summary>
    /// <param name="shape">Any shape.</param>
    /// <param name="scaleFraction">More than 0; 1 leaves it as it is.</param>
    /// <exception cref="ArgumentException">A kind of shape that is not known.</exception>
    public static Shape By(Shape shape, double scaleFraction)
    {
        var k = scaleFraction;
        return shape switch
        {
            Line l => l with { X1Mm = l.X1Mm * k, Y1Mm = l.Y1Mm * k, X2Mm = l.X2Mm * k, Y2Mm = l.Y2Mm * k, WidthMm = l.WidthMm * k },
            Box b => b with
            {
                XMm = b.XMm * k, YMm = b.YMm * k, WidthMm = b.WidthMm * k, HeightMm = b.HeightMm * k, StrokeMm = b.StrokeMm * k, RadiusMm = b.RadiusMm * k,
            },
            Disc d => d with { XMm = d.XMm * k, YMm = d.YMm * k, RadiusMm = d.RadiusMm * k, StrokeMm = d.StrokeMm * k },
            Text t => t with { XMm = t.XMm * k, BaselineMm = t.BaselineMm * k, SizePt = t.SizePt * k },
            Outline o => o with { Steps = [.. o.Steps.Select(s => By(s, k))], StrokeMm = o.StrokeMm * k },
            _ => throw new ArgumentException($"A drawing has no shape of the kind {shape.GetType().Name}.", nameof(shape)),
        };
    }

    private static OutlineStep By(OutlineStep step, double k) => step with
    {
        XMm = step.XMm * k, YMm = step.YMm * k, C1XMm = step.C1XMm * k, C1YMm = step.C1YMm * k, C2XMm = step.C2XMm * k, C2YMm = step.C2YMm * k,
    };
}
