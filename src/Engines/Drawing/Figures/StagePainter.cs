namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Paints what is around the bodies: some of it behind them, some over them.</summary>
internal static class StagePainter
{
    // In widths of the outline.
    private const double FloorLines = 1.2;

    public static void Behind(List<Shape> to, FigureStage stage, FigureInk ink)
    {
        if (stage.Floor.Count > 2)
        {
            to.Add(Area(stage.Floor).Stroke(Tone.Muted, .8 * ink.LineMm));
            if (stage.Base.Count > 2)
            {
                to.Add(Area(stage.Base).Fill(Tone.AccentMiddle));
                to.Add(Area(stage.Base).Stroke(Tone.Accent, ink.LineMm));
            }
            foreach (var contact in stage.Contacts.Where(c => c.Count > 2))
            {
                to.Add(Area(contact).Stroke(Tone.Accent, 5 * ink.LineMm));
                to.Add(Area(contact).Fill(Tone.Accent));
            }
        }
        if (stage.Wall.Count > 2) to.Add(Area(stage.Wall).Stroke(Tone.Muted, .8 * ink.LineMm));
    }

    public static void Before(List<Shape> to, FigureStage stage, FigureInk ink)
    {
        // The edge of what stands on the floor lies in its line.
        if (stage.Floor.Count == 2)
            to.Add(Straight(Lower(stage.Floor[0], ink), Lower(stage.Floor[1], ink), FloorLines * ink.LineMm, Tone.Ink));
        if (stage.Wall.Count == 2) Wall(to, stage, ink);
        if (stage.Base.Count == 2) to.Add(Straight(stage.Base[0], stage.Base[1], 3 * ink.LineMm, Tone.Accent));
        foreach (var contact in stage.Contacts.Where(c => c.Count == 2))
            to.Add(Straight(contact[0], contact[1], 2.6 * ink.LineMm, Tone.Ink));
        if (stage.Gravity.Count == 2) Gravity(to, stage.Gravity[0], stage.Gravity[1], ink);
    }

    private static void Wall(List<Shape> to, FigureStage stage, FigureInk ink)
    {
        var asideMm = stage.BehindWall * FloorLines / 2 * ink.LineMm;
        var (foot, top) = (Lower(stage.Wall[0], ink), stage.Wall[1]);
        (foot, top) = (foot with { XMm = foot.XMm + asideMm }, top with { XMm = top.XMm + asideMm });
        to.Add(Straight(foot, top, FloorLines * ink.LineMm, Tone.Ink));
        // Short strokes behind it, as walls are drawn in plans.
        var pitchMm = 7 * ink.LineMm;
        var path = new FigurePath();
        for (var yMm = foot.YMm - pitchMm / 2; yMm > top.YMm + pitchMm / 2; yMm -= pitchMm)
        {
            path.MoveTo(foot.XMm, yMm);
            path.LineTo(foot.XMm + stage.BehindWall * WallDepthMm(ink), yMm - WallDepthMm(ink));
        }
        if (!path.IsEmpty) to.Add(path.Stroke(Tone.Muted, .7 * ink.LineMm));
    }

    private static Spot Lower(Spot spot, FigureInk ink) => spot with { YMm = spot.YMm + FloorLines / 2 * ink.LineMm };

    private static double WallDepthMm(FigureInk ink) => ink.WallMm - FloorLines * ink.LineMm;

    private static void Gravity(List<Shape> to, Spot centre, Spot floor, FigureInk ink)
    {
        var radiusMm = 3.2 * ink.LineMm;
        var dashed = new Line(Short(centre.XMm), Short(centre.YMm), Short(floor.XMm), Short(floor.YMm), Math.Round(.9 * ink.LineMm, 2), Tone.Ink, IsDashed: true);
        to.Add(dashed with { WidthMm = Math.Round(2.3 * ink.LineMm, 2), Tone = Tone.Ground, IsDashed = false });
        to.Add(dashed);
        to.Add(new Disc(Short(centre.XMm), Short(centre.YMm), Short(radiusMm + ink.LineMm), Tone.Ground));
        to.Add(new Disc(Short(centre.XMm), Short(centre.YMm), Short(radiusMm), Tone.Ink));
        // The sign engineers use: a disc of four quarters, two of them open.
        foreach (var quarter in (ReadOnlySpan<int>)[0, 2])
        {
            var path = new FigurePath();
            var inner = radiusMm - .7 * ink.LineMm;
            var (sine, cosine) = Math.SinCos(quarter * Math.PI / 2);
            path.MoveTo(centre.XMm, centre.YMm);
            path.LineTo(centre.XMm + cosine * inner, centre.YMm + sine * inner);
            path.Arc(new(centre.XMm, centre.YMm), new(inner, 0), new(0, inner), quarter * Math.PI / 2, (quarter + 1) * Math.PI / 2);
            path.Close();
            to.Add(path.Fill(Tone.Ground));
        }
    }

    private static FigurePath Area(IReadOnlyList<Spot> corners)
    {
        var path = new FigurePath();
        path.Polygon([.. corners.Select(c => new Flat(c.XMm, c.YMm))]);
        return path;
    }

    private static Outline Straight(Spot from, Spot to, double widthMm, Tone tone)
    {
        var path = new FigurePath();
        path.MoveTo(from.XMm, from.YMm);
        path.LineTo(to.XMm, to.YMm);
        return path.Stroke(tone, widthMm);
    }

    private static double Short(double mm) => Math.Round(mm, 2);
}
