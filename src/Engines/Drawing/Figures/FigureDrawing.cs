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
        foreach (var layer in layers.OrderBy(l => l.DepthMm)) layer.Paint(shapes, ink);
        StagePainter.Before(shapes, stage, ink);
        return new Scene(widthMm, heightMm, shapes, description);
    }

    private static void Add(List<FigureLayer> layers, FigureBody body, FigureInk ink, double statureMm)
    {
        var kit = FigureKit.Of(body.Kit);
        var slices = body.Shorts.Concat(body.Shirt).SelectMany(s => s).ToArray();
        var trunkDepthMm = slices.Average(r => r.DepthMm);
        foreach (var limb in body.Limbs) layers.AddRange(LimbLayers.Of(limb, kit, ink, trunkDepthMm, statureMm));

        var trunk = new FigureLayer(trunkDepthMm);
        var (shorts, shirt) = (new FigurePath(), new FigurePath());
        Sweep(trunk.Whole, [.. body.Shorts, .. body.Shirt]);
        Sweep(shorts, body.Shorts);
        Sweep(shirt, body.Shirt);
        trunk.Fill(shorts, kit.Shorts);
        trunk.Fill(shirt, kit.Shirt);
        layers.Add(trunk);
        // A chin is before the chest of the same depth.
        layers.Add(HeadLayer.Of(body.Head, ink, body.Head.Middle.DepthMm + .04 * statureMm));
    }

    private static void Sweep(FigurePath path, IReadOnlyList<IReadOnlyList<Round>> slices)
    {
        for (var i = 1; i < slices.Count; i++) RoundHull.Add(path, [.. slices[i - 1], .. slices[i]]);
    }
}
