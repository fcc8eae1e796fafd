namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Draws bodies in our one style: tapered limbs, paper-white skin with an even outline, a light shirt and dark shorts.</summary>
/// <remarks>
/// Nearer parts are painted over farther ones with a gap of the page's colour around them; a limb that lies across the view has no
/// line at its joint, one that is folded keeps a crease. Skin has no colour: the figures are nobody in particular.
/// </remarks>
public static class FigureDrawing
{
    /// <summary>The drawing.</summary>
    /// <param name="bodies">As they are seen, one or more, in one frame of depth.</param>
    /// <param name="stage">What is around them.</param>
    /// <param name="statureMm">How tall the standing body would be drawn; more than 0.</param>
    /// <param name="widthMm">Width of the scene.</param>
    /// <param name="heightMm">Height of the scene.</param>
    /// <param name="description">What it shows, in words.</param>
    public static Scene Of(IReadOnlyList<FigureBody> bodies, FigureStage stage, double statureMm, double widthMm, double heightMm, string description)
    {
        var ink = FigureInk.Of(statureMm);
        var layers = new List<FigureLayer>();
        foreach (var body in bodies) Add(layers, body, ink, statureMm);
        var shapes = new List<Shape>();
        StagePainter.Behind(shapes, stage, ink);
        // A stable order: what lies at one depth stays as it was listed.
        FigureLayer[] ordered = [.. layers.OrderBy(l => l.DepthMm)];
        var painted = new List<FigurePath>();
        for (var i = 0; i < ordered.Length; i++)
        {
            // From the side the far limb of a pair often lies exactly behind the near one.
            if (!ordered.AsSpan(i + 1).ToArray().Any(nearer => nearer.Whole.IsSame(ordered[i].Whole))) ordered[i].Paint(shapes, painted, ink);
        }
        StagePainter.Before(shapes, stage, ink);
        return new Scene(widthMm, heightMm, shapes, description);
    }

    private static void Add(List<FigureLayer> layers, FigureBody body, FigureInk ink, double statureMm)
    {
        var kit = FigureKit.Of(body.Kit);
        var trunkDepthMm = Depth([.. body.Shorts, .. body.Shirt]);
        foreach (var limb in body.Limbs)
            layers.AddRange(LimbLayers.Of(limb, body, kit, ink, IsFar(limb, body, trunkDepthMm, statureMm), statureMm));
        layers.AddRange(Trunk(body, kit));
        layers.Add(HeadLayer.Neck(body.Head, statureMm));
        layers.Add(Head(body, ink, statureMm));
    }

    // Where the trunk points at the viewer or away, chest and hips hide each other: two layers.
    private static IEnumerable<FigureLayer> Trunk(FigureBody body, FigureKit kit)
    {
        var (hips, chest) = (body.Shorts[1], body.Shirt[^2]);
        var apartMm = (Middle(chest) - Middle(hips)).Length;
        var depthMm = chest.Average(r => r.DepthMm) - hips.Average(r => r.DepthMm);
        var isEndOn = Math.Abs(depthMm) > 1.3 * apartMm;
        var (shirt, shorts) = (Depth(body.Shirt), Depth(body.Shorts));
        var lower = new FigureLayer(isEndOn ? shorts : Depth([.. body.Shorts, .. body.Shirt])) { Inside = isEndOn ? kit.Shorts : kit.Shirt };
        Sweep(lower.Whole, isEndOn ? body.Shorts : [.. body.Shorts.Take(2), .. body.Shirt]);
        // Legs come out of the shorts without a line: what is under the edge of the trunk shows again.
        foreach (var leg in body.Limbs.Where(l => !l.IsArm))
        {
            // A thigh that is folded up behind the trunk is hidden by it.
            var (spine, thigh) = (Middle(chest) - Middle(hips), Flat.Of(leg.Upper[^1]) - Flat.Of(leg.Upper[0]));
            if (Flat.Dot(spine, thigh) > .5 * spine.Length * thigh.Length) continue;
            var root = new FigurePath();
            RoundHull.Add(root, leg.Upper[0].Towards(leg.Upper[^1], .2 * leg.ClothedFraction), leg.Upper[0].Towards(leg.Upper[^1], .6 * leg.ClothedFraction));
            lower.Fill(root, kit.Shorts);
        }
        if (!isEndOn)
        {
            var pelvis = new FigurePath();
            Sweep(pelvis, body.Shorts);
            lower.Fill(pelvis, kit.Shorts);
        }
        yield return lower;
        if (!isEndOn) yield break;

        var upper = new FigureLayer(shirt) { Inside = kit.Shirt };
        Sweep(upper.Whole, [body.Shorts[2], .. body.Shirt]);
        yield return upper;
    }

    private static double Depth(IReadOnlyList<IReadOnlyList<Round>> slices) => slices.Average(s => s.Average(r => r.DepthMm));

    private static Flat Middle(IReadOnlyList<Round> slice) => new(slice.Average(r => r.XMm), slice.Average(r => r.YMm));

    // A chin is before the chest of the same depth. Which way the face looks matters more than which arm hides it.
    private static FigureLayer Head(FigureBody body, FigureInk ink, double statureMm)
    {
        var head = body.Head.Middle;
        var ownMm = head.DepthMm + .04 * statureMm;
        var depthMm = ownMm;
        foreach (var arm in body.Limbs.Where(l => l.IsArm))
            if (IsBeside(Flat.Of(head), Flat.Of(arm.Upper[0]), Flat.Of(arm.Upper[^1]), .5 * head.RadiusMm))
                depthMm = Math.Max(depthMm, arm.DepthMm + .05 * statureMm);
        return HeadLayer.Of(body.Head, ink, depthMm, isOverArm: depthMm > ownMm);
    }

    private static bool IsBeside(Flat point, Flat from, Flat to, double withinMm)
    {
        var (along, off) = (to - from, point - from);
        var atFraction = Flat.Dot(off, along) / Math.Max(1e-9, Flat.Dot(along, along));
        return atFraction is > .2 and < .9 && (off - atFraction * along).Length < withinMm;
    }

    // Of a pair, the one that is clearly behind the other and behind the trunk.
    private static bool IsFar(FigureLimb limb, FigureBody body, double trunkDepthMm, double statureMm) =>
        limb.DepthMm < trunkDepthMm - .02 * statureMm
        && body.Limbs.Any(other => other.IsArm == limb.IsArm && limb.DepthMm < other.DepthMm - .05 * statureMm);

    private static void Sweep(FigurePath path, IReadOnlyList<IReadOnlyList<Round>> slices)
    {
        for (var i = 1; i < slices.Count; i++) RoundHull.Add(path, [.. slices[i - 1], .. slices[i]]);
    }
}
