namespace Slantwise.Engines.Drawing;

/// <summary>Puts a drawing inside another: its shapes elsewhere, at the same size.</summary>
public static class ShapeMove
{
    /// <summary>A shape moved along the page.</summary>
    /// <param name="shape">Any shape.</param>
    /// <param name="rightMm">To the right; less than 0 to the left.</param>
    /// <param name="downMm">Down; less than 0 up.</param>
    /// <exception cref="ArgumentException">A kind of shape that is not known.</exception>
    public static Shape By(Shape shape, double rightMm, double downMm) => shape switch
    {
        Line l => l with { X1Mm = l.X1Mm + rightMm, X2Mm = l.X2Mm + rightMm, Y1Mm = l.Y1Mm + downMm, Y2Mm = l.Y2Mm + downMm },
        Box b => b with { XMm = b.XMm + rightMm, YMm = b.YMm + downMm },
        Disc d => d with { XMm = d.XMm + rightMm, YMm = d.YMm + downMm },
        Text t => t with { XMm = t.XMm + rightMm, BaselineMm = t.BaselineMm + downMm },
        Outline o => o with { Steps = [.. o.Steps.Select(s => By(s, rightMm, downMm))] },
        _ => throw new ArgumentException($"A drawing has no shape of the kind {shape.GetType().Name}.", nameof(shape)),
    };

    private static OutlineStep By(OutlineStep step, double rightMm, double downMm) => step.Kind switch
    {
        OutlineStepKind.Close => step,
        OutlineStepKind.Curve => step with
        {
            XMm = step.XMm + rightMm, C1XMm = step.C1XMm + rightMm, C2XMm = step.C2XMm + rightMm,
            YMm = step.YMm + downMm, C1YMm = step.C1YMm + downMm, C2YMm = step.C2YMm + downMm,
        },
        _ => step with { XMm = step.XMm + rightMm, YMm = step.YMm + downMm },
    };
}
