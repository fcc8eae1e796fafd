namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Turns an arm or a leg into layers: one where it lies across the view, two or three where it points at the viewer.</summary>
internal static class LimbLayers
{
    // Our own choices, tried on the whole library: where a joint's seam disappears, and from which bend on a crease stays.
    private const double OneLayerCosine = .55;
    private const double CreaseCosine = .3;
    private const double ClearFromFraction = .45;

    public static IEnumerable<FigureLayer> Of(FigureLimb limb, FigureBody body, FigureKit kit, FigureInk ink, bool isFar, double statureMm)
    {
        var (root, middle, end) = (limb.Upper[0], limb.Upper[^1], limb.Lower[^1]);
        var (skin, edge) = isFar ? (FigureKit.FarSkin, Tone.Muted) : (FigureKit.Skin, Tone.Ink);
        // At the trunk's own depth arms hang before it and legs come out from under it.
        var biasMm = (limb.IsArm ? .03 : -.03) * statureMm;
        var isSeamed = IsSeamed(root, middle, end);

        var upper = new FigureLayer((isSeamed ? (root.DepthMm + middle.DepthMm) / 2 : limb.DepthMm) + biasMm) { Edge = edge, Inside = skin };
        RoundHull.Add(upper.Whole, [.. limb.Upper]);
        RoundHull.Add(upper.Clear, root.Towards(middle, ClearFromFraction), middle);
        if (!isSeamed)
        {
            LowerAndTip(upper.Whole, limb);
            ClearLower(upper.Clear, limb);
        }
        var cloth = limb.IsArm ? kit.Shirt : kit.Shorts;
        if (!isFar) upper.Fill(Root(limb, body), cloth);
        upper.Fill(Cloth(limb), cloth);
        if (!isSeamed) Crease(upper, limb, skin, edge, ink);
        yield return upper;
        if (!isSeamed) yield break;

        var lower = new FigureLayer((middle.DepthMm + end.DepthMm) / 2 + biasMm) { Edge = edge, Inside = skin };
        LowerAndTip(lower.Whole, limb);
        ClearLower(lower.Clear, limb);
        yield return lower;
    }

    // Cloth is one piece with the trunk's: no edge where a sleeve or a leg grows out of it.
    private static FigurePath Root(FigureLimb limb, FigureBody body)
    {
        var path = new FigurePath();
        if (!limb.IsArm)
        {
            RoundHull.Add(path, [.. body.Shorts[0], .. body.Shorts[1]]);
            return path;
        }
        var shoulders = body.Shirt[^2];
        var root = limb.Upper[0];
        var near = shoulders.MinBy(s => (Flat.Of(s) - Flat.Of(root)).Length + Math.Abs(s.DepthMm - root.DepthMm));
        RoundHull.Add(path, near, root with { RadiusMm = .7 * root.RadiusMm });
        return path;
    }

    // The seam shows where one half hides much of the other: a knee or an elbow that points at the viewer or away.
    private static bool IsSeamed(Round root, Round middle, Round end)
    {
        var (up, down) = (Flat.Of(root) - Flat.Of(middle), Flat.Of(end) - Flat.Of(middle));
        var reachMm = 1.5 * middle.RadiusMm;
        var depthsMm = Math.Abs(root.DepthMm - end.DepthMm);
        if (up.Length < reachMm || down.Length < reachMm) return true;
        return Flat.Dot(up, down) / (up.Length * down.Length) > OneLayerCosine && depthsMm > 2 * middle.RadiusMm;
    }

    // The gap follows the limb roughly: fewer numbers, and nobody sees the edge of a gap.
    private static void ClearLower(FigurePath path, FigureLimb limb)
    {
        RoundHull.Add(path, limb.Lower[0], limb.Lower[^1]);
        RoundHull.Add(path, [.. limb.Tip[0]]);
    }

    private static void LowerAndTip(FigurePath path, FigureLimb limb)
    {
        RoundHull.Add(path, [.. limb.Lower]);
        foreach (var group in limb.Tip) RoundHull.Add(path, [.. group]);
    }

    // Cloth ends in a straight hem across the limb.
    private static FigurePath Cloth(FigureLimb limb)
    {
        var path = new FigurePath();
        var (root, middle) = (limb.Upper[0], limb.Upper[^1]);
        var hem = root.Towards(middle, limb.ClothedFraction);
        var along = Flat.Of(hem) - Flat.Of(root);
        if (along.Length < .3 * root.RadiusMm)
        {
            RoundHull.Add(path, root, hem);
            return path;
        }
        var unit = 1 / along.Length * along;
        var across = new Flat(unit.Y, -unit.X);
        var cosine = (root.RadiusMm - hem.RadiusMm) / along.Length;
        var sine = Math.Sqrt(Math.Max(0, 1 - cosine * cosine));
        var (left, right) = (cosine * unit + sine * across, cosine * unit - sine * across);
        var (from, to) = (Flat.Of(root) + root.RadiusMm * left, Flat.Of(hem) + hem.RadiusMm / Math.Max(.2, sine) * across);
        path.MoveTo(to.X, to.Y);
        path.LineTo(from.X, from.Y);
        var fromRad = Math.Atan2(left.Y, left.X);
        var toRad = Math.Atan2(right.Y, right.X);
        // Round the far side of the shoulder or hip: against the turn of the screen's angles.
        if (toRad > fromRad) toRad -= 2 * Math.PI;
        path.Arc(Flat.Of(root), new(root.RadiusMm, 0), new(0, root.RadiusMm), fromRad, toRad);
        var back = Flat.Of(hem) - hem.RadiusMm / Math.Max(.2, sine) * across;
        path.LineTo(back.X, back.Y);
        path.Close();
        return path;
    }

    // Where two halves fold onto each other a line stays between them.
    private static void Crease(FigureLayer layer, FigureLimb limb, Tone skin, Tone edge, FigureInk ink)
    {
        var (root, middle, end) = (limb.Upper[0], limb.Upper[^1], limb.Lower[^1]);
        var (up, down) = (Flat.Of(root) - Flat.Of(middle), Flat.Of(end) - Flat.Of(middle));
        var cosine = Flat.Dot(up, down) / (up.Length * down.Length);
        if (cosine < CreaseCosine) return;
        // A folded leg's shin may lie on its shorts.
        var shin = new FigurePath();
        LowerAndTip(shin, limb);
        layer.Fill(shin, skin);
        var inner = 1 / up.Length * up + 1 / down.Length * down;
        inner = 1 / inner.Length * inner;
        var sineHalf = Math.Sqrt(Math.Max(1e-4, (1 - cosine) / 2));
        var toMm = Math.Min(middle.RadiusMm / sineHalf + ink.LineMm, .9 * Math.Min(up.Length, down.Length));
        var fromMm = .25 * middle.RadiusMm;
        if (toMm <= fromMm) return;
        var path = new FigurePath();
        var (from, to) = (Flat.Of(middle) + fromMm * inner, Flat.Of(middle) + toMm * inner);
        path.MoveTo(from.X, from.Y);
        path.LineTo(to.X, to.Y);
        layer.Line(path, edge, ink.LineMm);
    }
}
