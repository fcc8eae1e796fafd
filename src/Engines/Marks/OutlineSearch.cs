namespace Slantwise.Engines.Marks;

/// <summary>Looks for a field's outline near where it should be: a closed thin line, darker than what lies on both sides of it.</summary>
/// <remarks>
/// What one place of the line can add is limited, so that a dark stroke across a few of them weighs no more than they do.
/// </remarks>
internal static class OutlineSearch
{
    private const double BesideMm = .6;
    private const double MostFraction = .35;
    private const double LeastFraction = -.12;
    private const double ApartMm = .7;

    /// <summary>The clearest place within reach.</summary>
    /// <param name="patch">The field and around it: the reach and .7 mm more.</param>
    /// <param name="points">Its outline.</param>
    /// <param name="reachMm">How far to look to each side.</param>
    /// <param name="white">Paper's grey here.</param>
    public static OutlineSight Of(FieldPatch patch, ReadOnlySpan<OutlinePoint> points, double reachMm, double white)
    {
        var reach = (int)Math.Round(reachMm * FieldPatch.PxPerMm);
        var side = 2 * reach + 1;
        Span<float> scores = side * side <= 1024 ? stackalloc float[side * side] : new float[side * side];
        Score(patch, points, reach, (float)(1 / Math.Max(white, 1)), scores);
        var best = 0;
        for (var i = 1; i < scores.Length; i++) if (scores[i] > scores[best]) best = i;
        var (bx, by) = (best % side, best / side);
        float elsewhere = 0;
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var apart = Math.Max(Math.Abs(x - bx), Math.Abs(y - by));
                if (apart > ApartMm * FieldPatch.PxPerMm) elsewhere = Math.Max(elsewhere, scores[y * side + x]);
            }
        }
        var dx = bx - reach + (bx > 0 && bx < side - 1 ? Peak(scores[best - 1], scores[best], scores[best + 1]) : 0);
        var dy = by - reach + (by > 0 && by < side - 1 ? Peak(scores[best - side], scores[best], scores[best + side]) : 0);
        return new(dx / FieldPatch.PxPerMm, dy / FieldPatch.PxPerMm, scores[best], scores[best] - elsewhere);
    }

    private static void Score(FieldPatch patch, ReadOnlySpan<OutlinePoint> points, int reach, float perWhite, Span<float> scores)
    {
        var side = 2 * reach + 1;
        scores.Clear();
        foreach (var p in points)
        {
            if (!IsWithin(patch, p, reach)) continue;
            var (on, inside, outside) = (At(patch, p, 0), At(patch, p, -BesideMm), At(patch, p, BesideMm));
            var values = patch.Values;
            for (var y = 0; y < side; y++)
            {
                var line = (y - reach) * patch.Width - reach;
                var a = values.AsSpan(on + line, side);
                var b = values.AsSpan(inside + line, side);
                var c = values.AsSpan(outside + line, side);
                var to = scores.Slice(y * side, side);
                for (var x = 0; x < side; x++)
                    to[x] += Math.Min(Math.Max((.5f * (b[x] + c[x]) - a[x]) * perWhite, (float)LeastFraction), (float)MostFraction);
            }
        }
        for (var i = 0; i < scores.Length; i++) scores[i] /= points.Length;
    }

    private static int At(FieldPatch patch, OutlinePoint p, double outMm)
    {
        var (x, y) = patch.Pixel(p.XMm + outMm * p.OutX, p.YMm + outMm * p.OutY);
        return (int)Math.Round(y) * patch.Width + (int)Math.Round(x);
    }

    private static bool IsWithin(FieldPatch patch, OutlinePoint p, int reach)
    {
        var (x, y) = patch.Pixel(p.XMm, p.YMm);
        var need = reach + BesideMm * FieldPatch.PxPerMm + 1;
        return x >= need && y >= need && x < patch.Width - need && y < patch.Height - need;
    }

    // The top of the parabola through three neighbours.
    private static double Peak(double before, double at, double after)
    {
        var bend = before - 2 * at + after;
        return bend < 0 ? Math.Clamp(.5 * (before - after) / bend, -.5, .5) : 0;
    }
}
