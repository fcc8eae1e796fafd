namespace Slantwise.Engines.Marks;

/// <summary>From a guess to a map: each anchor's middle to a part of a pixel, a flat page through them, and the bend that is left.</summary>
internal sealed class AnchorPlacing(SheetLayout layout, CodePose? pose)
{
    private const double SearchMm = 4;
    private const double AnchorSpreadMm = .08;
    private const double FinderSpreadMm = .4;
    private const double OutlierMm = 1.2;
    private const double FitsMm = .35;
    private const int LeastCount = 4;

    /// <summary>The map and the anchors that agree with it; none if too few do.</summary>
    public (FormMap Map, IReadOnlyList<AnchorSight> Anchors)? Of(PictureLevel level, FormGuess guess)
    {
        var flat = new FormMap(guess.Flat, null);
        var sights = new List<AnchorSight>();
        for (var i = 0; i < layout.Anchors.Count; i++)
        {
            if (guess.Seen[i] is not { } square) continue;
            var anchor = layout.Anchors[i];
            var frame = LocalFrame.Around(flat, anchor.XMm, anchor.YMm, anchor.SizeMm / 2).MovedTo(new(square.XPx, square.YPx));
            if (AnchorEdges.Of(level, frame, anchor) is { } sight) sights.Add(sight);
        }
        if (Through(sights) is not { } first) return null;
        foreach (var anchor in layout.Anchors.Where(a => sights.All(s => s.Anchor != a)))
            if (Missing(level, first, anchor) is { } sight) sights.Add(sight);
        return WithoutOutliers(sights);
    }

    private static AnchorSight? Missing(PictureLevel level, FormMap map, Anchor anchor)
    {
        var frame = LocalFrame.Around(map, anchor.XMm, anchor.YMm, anchor.SizeMm / 2);
        if (frame.XPx < 0 || frame.YPx < 0 || frame.XPx * level.Scale > level.Image.WidthPx || frame.YPx * level.Scale > level.Image.HeightPx) return null;
        return AnchorSearch.Near(level, frame, anchor, SearchMm) is { } near ? AnchorEdges.Of(level, near, anchor) : null;
    }

    // The one that is farthest from what all others say goes first, then the next, until the rest agree.
    private (FormMap, IReadOnlyList<AnchorSight>)? WithoutOutliers(List<AnchorSight> sights)
    {
        while (Through(sights) is { } map)
        {
            // What bends smoothly through all of them needs no closer look.
            if (sights.All(s => OffMm(map, s) < FitsMm)) return IsSpread(sights) ? (map, sights) : null;
            var (worst, worstMm) = (-1, OutlierMm);
            for (var i = 0; i < sights.Count && sights.Count > LeastCount; i++)
            {
                List<AnchorSight> others = [.. sights[..i], .. sights[(i + 1)..]];
                if (Through(others) is not { } without) continue;
                // Predicted by the others, a corner may be off by more than one between two neighbours.
                var offMm = OffMm(map, sights[i]) + .3 * OffMm(without, sights[i]);
                if (offMm > worstMm) (worst, worstMm) = (i, offMm);
            }
            if (worst < 0) return sights.Count >= LeastCount && IsSpread(sights) ? (map, sights) : null;
            sights.RemoveAt(worst);
        }
        return null;
    }

    private FormMap? Through(IReadOnlyList<AnchorSight> sights)
    {
        if (sights.Count < LeastCount) return null;
        List<PlacedPoint> points = [.. sights.Select(s => new PlacedPoint(s.Anchor.XMm, s.Anchor.YMm, s.Middle.XPx, s.Middle.YPx))];
        if (Homography.Of(points.ToArray()) is not { } flat || flat.Back() is not { } back) return null;
        var shifts = points.Select(p => Shift(back, p, AnchorSpreadMm)).ToList();
        if (pose is not null) shifts.AddRange(pose.Finders.Select(f => Shift(back, f, FinderSpreadMm)));
        return new(flat, BendingSurface.Of(layout.WidthMm, layout.HeightMm, shifts, 1.5));
    }

    private static PlaceShift Shift(Homography back, PlacedPoint p, double spreadMm)
    {
        var there = back.At(p.XPx, p.YPx);
        return new(p.XMm, p.YMm, there.XPx - p.XMm, there.YPx - p.YMm, spreadMm);
    }

    private static double OffMm(FormMap map, AnchorSight sight)
    {
        var at = map.At(sight.Anchor.XMm, sight.Anchor.YMm);
        return double.Hypot(at.XPx - sight.Middle.XPx, at.YPx - sight.Middle.YPx) / map.ScaleAt(sight.Anchor.XMm, sight.Anchor.YMm);
    }

    // Anchors of one half of the form say nothing about the other.
    private bool IsSpread(List<AnchorSight> sights)
    {
        double Extent(Func<Anchor, double> of) => sights.Max(s => of(s.Anchor)) - sights.Min(s => of(s.Anchor));
        double Whole(Func<Anchor, double> of) => layout.Anchors.Max(of) - layout.Anchors.Min(of);
        return Extent(a => a.XMm) > .6 * Whole(a => a.XMm) && Extent(a => a.YMm) > .6 * Whole(a => a.YMm);
    }
}
