namespace Slantwise.Engines.Marks;

/// <summary>Finds a black square's middle to a part of a pixel, from where its four edges lie.</summary>
internal static class AnchorEdges
{
    private const int ProfileCount = 7;
    private const int SampleCount = 21;
    private const int RoundsAtMost = 4;
    private const double LeastStep = 18;
    private const double LeastStepFraction = .22;

    /// <summary>The square near a frame's middle, off by a fifth of its side at most.</summary>
    /// <returns>None where too few of its edges can be seen, or they are too far apart or too near to each other.</returns>
    public static AnchorSight? Of(PictureLevel level, LocalFrame frame, Anchor anchor)
    {
        Span<double> sides = stackalloc double[4];
        for (var round = 0; round < RoundsAtMost; round++)
        {
            double white = 0, black = 0, edge = 0;
            var seen = 0;
            for (var side = 0; side < 4; side++)
            {
                var found = Side(level, frame, anchor, side);
                sides[side] = found.AtMm;
                if (double.IsNaN(found.AtMm)) continue;
                seen++;
                (white, black, edge) = (white + found.White, black + found.Black, edge + found.EdgeMm);
            }
            if (seen < 3) return null;
            if (Between(sides[0], sides[2], anchor.SizeMm) is not { } dx || Between(sides[1], sides[3], anchor.SizeMm) is not { } dy) return null;
            frame = frame.Moved(dx, dy);
            if (round < RoundsAtMost - 1 && double.Hypot(dx, dy) > .01) continue;
            return new(anchor, new(frame.XPx, frame.YPx), white / seen, black / seen, edge / seen);
        }
        return null;
    }

    // How far the middle lies towards the first side. With one side hidden the printed length stands in for it.
    private static double? Between(double onwards, double back, double sizeMm)
    {
        if (double.IsNaN(onwards) && double.IsNaN(back)) return null;
        if (double.IsNaN(onwards)) return sizeMm / 2 - back;
        if (double.IsNaN(back)) return onwards - sizeMm / 2;
        return Math.Abs(onwards + back - sizeMm) > .3 * sizeMm ? null : (onwards - back) / 2;
    }

    // One side: right, below, left, above. The median of several profiles across it, so that a stroke that touches it does no harm.
    private static (double AtMm, double White, double Black, double EdgeMm) Side(PictureLevel level, LocalFrame frame, Anchor anchor, int side)
    {
        Span<double> at = stackalloc double[ProfileCount], edges = stackalloc double[ProfileCount];
        double white = 0, black = 0;
        var count = 0;
        for (var i = 0; i < ProfileCount; i++)
        {
            var along = (i / (ProfileCount - 1.0) - .5) * .7 * anchor.SizeMm;
            var profile = Profile(level, frame, anchor.SizeMm, side, along);
            if (double.IsNaN(profile.AtMm)) continue;
            (at[count], edges[count]) = (profile.AtMm, profile.EdgeMm);
            (white, black, count) = (white + profile.White, black + profile.Black, count + 1);
        }
        if (count < 4) return (double.NaN, 0, 0, 0);
        at[..count].Sort();
        edges[..count].Sort();
        var median = (at[count / 2] + at[(count - 1) / 2]) / 2;
        return (median, white / count, black / count, edges[count / 2]);
    }

    // From inside to outside: dark, then light. The edge is where as much dark lies beyond it as light before it.
    private static (double AtMm, double White, double Black, double EdgeMm) Profile(PictureLevel level, LocalFrame frame, double sizeMm, int side, double along)
    {
        Span<double> greys = stackalloc double[SampleCount];
        var (reachMm, halfMm) = (.22 * sizeMm, sizeMm / 2);
        var stepMm = 2 * reachMm / (SampleCount - 1);
        for (var i = 0; i < SampleCount; i++)
        {
            var outMm = halfMm - reachMm + i * stepMm;
            greys[i] = side switch
            {
                0 => frame.Grey(level, outMm, along),
                1 => frame.Grey(level, along, outMm),
                2 => frame.Grey(level, -outMm, along),
                _ => frame.Grey(level, along, -outMm),
            };
        }
        double black = 255, white = 0;
        for (var i = 0; i < SampleCount / 2; i++) black = Math.Min(black, greys[i]);
        for (var i = SampleCount / 2; i < SampleCount; i++) white = Math.Max(white, greys[i]);
        if (white - black < LeastStep || white - black < LeastStepFraction * white) return (double.NaN, 0, 0, 0);
        var (middle, quarter, from, upTo) = ((white + black) / 2, (white - black) / 4, double.NaN, double.NaN);
        // Crossings on the way up only: what falls again outside is a stroke beside the square.
        var crossing = double.NaN;
        for (var i = 1; i < SampleCount; i++)
        {
            from = Crossing(greys, i, black + quarter, from, isFirst: false);
            upTo = Crossing(greys, i, white - quarter, upTo, isFirst: true);
            crossing = Crossing(greys, i, middle, crossing, isFirst: true);
        }
        if (double.IsNaN(crossing)) return (double.NaN, 0, 0, 0);
        var edge = double.IsNaN(from) || double.IsNaN(upTo) ? 2 * reachMm : Math.Max(upTo - from, 0) * stepMm;
        return (halfMm - reachMm + crossing * stepMm, white, black, edge);
    }

    private static double Crossing(ReadOnlySpan<double> greys, int i, double level, double before, bool isFirst)
    {
        if (isFirst && !double.IsNaN(before)) return before;
        return greys[i - 1] < level && greys[i] >= level ? i - 1 + (level - greys[i - 1]) / (greys[i] - greys[i - 1]) : before;
    }
}
