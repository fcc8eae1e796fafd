namespace Slantwise.Engines.Marks;

/// <summary>Looks for a black square near where it should be, by the difference between it and the paper around it.</summary>
internal static class AnchorSearch
{
    private const double LeastContrastFraction = .25;

    /// <summary>The frame at the best place; none if nothing there looks like it.</summary>
    public static LocalFrame? Near(PictureLevel level, LocalFrame frame, Anchor anchor, double radiusMm)
    {
        var stepMm = anchor.SizeMm / 6;
        var steps = (int)Math.Ceiling(radiusMm / stepMm);
        var (best, bestFraction) = (frame, LeastContrastFraction);
        for (var j = -steps; j <= steps; j++)
        {
            for (var i = -steps; i <= steps; i++)
            {
                var there = frame.Moved(i * stepMm, j * stepMm);
                var contrast = Contrast(level, there, anchor);
                if (contrast <= bestFraction) continue;
                (best, bestFraction) = (there, contrast);
            }
        }
        return bestFraction > LeastContrastFraction ? best : null;
    }

    // Paper must be on all sides: what counts is the fourth darkest of the sixteen places around, so that one stroke beside it does no harm.
    private static double Contrast(PictureLevel level, LocalFrame frame, Anchor anchor)
    {
        Span<double> around = stackalloc double[16];
        var (outMm, inMm) = (anchor.SizeMm * .72, anchor.SizeMm * .375);
        double inside = 0, hole = 0;
        for (var k = 0; k < 16; k++)
        {
            var (x, y) = OnSquare(k);
            around[k] = frame.Grey(level, x * outMm, y * outMm);
            inside += frame.Grey(level, x * inMm, y * inMm) / 16;
        }
        if (anchor.IsHollow)
        {
            for (var k = 0; k < 4; k++)
            {
                var (x, y) = OnSquare(4 * k);
                hole += frame.Grey(level, x * anchor.SizeMm * .12, y * anchor.SizeMm * .12) / 4;
            }
        }
        around.Sort();
        var paper = anchor.IsHollow ? Math.Min(around[4], hole) : around[4];
        return paper <= 8 ? 0 : (paper - inside) / around[8];
    }

    // Sixteen places on the outline of a square of half side 1, from a corner on.
    private static (double X, double Y) OnSquare(int k)
    {
        var along = (k % 4) / 2.0 - 1;
        return (k / 4) switch { 0 => (along, -1), 1 => (1, along), 2 => (-along, 1), _ => (-1, -along) };
    }
}
