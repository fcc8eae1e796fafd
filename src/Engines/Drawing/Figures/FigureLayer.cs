namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Something painted at one depth: a gap around it, its edge and inside, more fills and lines on it.</summary>
internal sealed class FigureLayer(double depthMm)
{
    private readonly List<(FigurePath Path, Tone Tone)> _fills = [];
    private readonly List<(FigurePath Path, Tone Tone, double WidthMm)> _lines = [];

    public double DepthMm { get; } = depthMm;

    /// <summary>The whole outline; the fills lie inside it.</summary>
    public FigurePath Whole { get; } = new();

    /// <summary>What is kept clear of whatever is behind: the part away from the body it grows from. Empty for none.</summary>
    public FigurePath Clear { get; } = new();

    public Tone Edge { get; init; } = Tone.Ink;

    public Tone Inside { get; init; } = FigureKit.Skin;

    public void Fill(FigurePath path, Tone tone) => _fills.Add((path, tone));

    public void Line(FigurePath path, Tone tone, double widthMm) => _lines.Add((path, tone, widthMm));

    /// <summary>Paints it over what was painted before.</summary>
    public void Paint(List<Shape> to, List<FigurePath> before, FigureInk ink)
    {
        if (!Clear.IsEmpty && before.Any(Clear.MayMeet)) to.Add(Clear.Stroke(Tone.Ground, 2 * (ink.LineMm + ink.GapMm)));
        to.Add(Whole.Edged(Edge, ink.LineMm, Inside));
        foreach (var (path, tone) in _fills) to.Add(path.Fill(tone));
        foreach (var (path, tone, widthMm) in _lines) to.Add(path.Stroke(tone, widthMm));
        before.Add(Whole);
    }
}
