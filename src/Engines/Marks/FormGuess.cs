namespace Slantwise.Engines.Marks;

/// <summary>Where a form may lie: four black squares taken for its corners, and what else fits.</summary>
/// <param name="Flat">The map from those four.</param>
/// <param name="Seen">A square an anchor, none where there is none near.</param>
/// <param name="Score">How many fit, less a little for each that is off.</param>
internal sealed record FormGuess(Homography Flat, IReadOnlyList<DarkSquare?> Seen, double Score)
{
    private const double NearMm = 8;

    /// <summary>A guess from four places; none if a page cannot be seen so, or too little fits.</summary>
    public static FormGuess? Of(SheetLayout layout, ReadOnlySpan<PlacedPoint> four, SquareGrid squares, double cellPx)
    {
        if (Homography.Of(four) is not { } flat || !IsInFront(layout, flat)) return null;
        var (seen, score) = (new DarkSquare?[layout.Anchors.Count], 0.0);
        for (var i = 0; i < seen.Length; i++)
        {
            var anchor = layout.Anchors[i];
            var scale = flat.Scale(anchor.XMm, anchor.YMm);
            if (squares.Nearest(flat.At(anchor.XMm, anchor.YMm), anchor.SizeMm * scale, anchor.IsHollow, Math.Min(NearMm * scale, cellPx)) is not { } found) continue;
            seen[i] = found.Square;
            score += 1 - .4 * found.OffPx / (NearMm * scale);
        }
        return new(flat, seen, score);
    }

    /// <summary>Whether two guesses are the same for all that matters.</summary>
    public bool IsLike(FormGuess other, SheetLayout layout) => layout.Anchors.Take(4).All(a =>
    {
        var (here, there) = (Flat.At(a.XMm, a.YMm), other.Flat.At(a.XMm, a.YMm));
        return double.Hypot(here.XPx - there.XPx, here.YPx - there.YPx) < 6 * Math.Abs(Flat.Scale(a.XMm, a.YMm));
    });

    // All corners before the eye, none mirrored, and none so much farther than another as no hand holds a camera.
    private static bool IsInFront(SheetLayout layout, Homography flat)
    {
        var (least, most) = (double.MaxValue, 0.0);
        foreach (var (x, y) in ((double, double)[])[(0, 0), (layout.WidthMm, 0), (layout.WidthMm, layout.HeightMm), (0, layout.HeightMm)])
        {
            var scale = flat.Scale(x, y);
            if (!(scale > .5)) return false;
            (least, most) = (Math.Min(least, scale), Math.Max(most, scale));
        }
        return most < 4 * least;
    }
}
