namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Collects the steps of one outline, to a hundredth of a millimetre: finer is not seen, and shorter files are drawn sooner.</summary>
internal sealed class FigurePath
{
    // A cubic follows this much of a circle within 0.004 of its radius, at most 0.02 mm in the figures we draw.
    private const double LongestArcRad = 2.4;
    private const double FlatMm = .01;
    private readonly List<OutlineStep> _steps = [];
    private double _leftMm = double.PositiveInfinity;
    private double _topMm = double.PositiveInfinity;
    private double _rightMm = double.NegativeInfinity;
    private double _bottomMm = double.NegativeInfinity;

    public bool IsEmpty => _steps.Count == 0;

    /// <summary>Whether the boxes around two paths meet: where they do not, neither do the paths.</summary>
    public bool MayMeet(FigurePath other) =>
        _leftMm <= other._rightMm && other._leftMm <= _rightMm && _topMm <= other._bottomMm && other._topMm <= _bottomMm;

    public Outline Fill(Tone tone) => new(_steps, tone);

    public Outline Stroke(Tone tone, double widthMm) => new(_steps, tone, Math.Round(widthMm, 2));

    public bool IsSame(FigurePath other) => _steps.SequenceEqual(other._steps);

    public Outline Edged(Tone edge, double edgeMm, Tone inside) => new(_steps, edge, Math.Round(2 * edgeMm, 2), inside);

    public void MoveTo(double xMm, double yMm) => Add(new(OutlineStepKind.Move, Short(xMm), Short(yMm)));

    public void LineTo(double xMm, double yMm)
    {
        var step = new OutlineStep(OutlineStepKind.Line, Short(xMm), Short(yMm));
        if (step.XMm != _steps[^1].XMm || step.YMm != _steps[^1].YMm) Add(step);
    }

    public void Close() => _steps.Add(new(OutlineStepKind.Close));

    /// <summary>Part of an ellipse from where the path stands: centre + a·cos + b·sin, from one angle to another.</summary>
    public void Arc(Flat centre, Flat a, Flat b, double fromRad, double toRad)
    {
        var riseMm = (1 - Math.Cos(Math.Min(Math.PI, Math.Abs(toRad - fromRad) / 2))) * Math.Max(a.Length, b.Length);
        if (riseMm < FlatMm)
        {
            var end = centre + Math.Cos(toRad) * a + Math.Sin(toRad) * b;
            LineTo(end.X, end.Y);
            return;
        }
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(toRad - fromRad) / LongestArcRad - 1e-9));
        var stepRad = (toRad - fromRad) / pieces;
        // The length of a cubic's handles that follows an arc.
        var handle = 4.0 / 3 * Math.Tan(stepRad / 4);
        for (var i = 0; i < pieces; i++)
        {
            var (sine, cosine) = Math.SinCos(fromRad + i * stepRad);
            var (sineTo, cosineTo) = Math.SinCos(fromRad + (i + 1) * stepRad);
            var to = centre + cosineTo * a + sineTo * b;
            var c1 = centre + (cosine - handle * sine) * a + (sine + handle * cosine) * b;
            var c2 = centre + (cosineTo + handle * sineTo) * a + (sineTo - handle * cosineTo) * b;
            Add(new(OutlineStepKind.Curve, Short(to.X), Short(to.Y), Short(c1.X), Short(c1.Y), Short(c2.X), Short(c2.Y)));
        }
    }

    /// <summary>A whole ellipse; the other way round it cuts a hole.</summary>
    public void Ellipse(Flat centre, Flat a, Flat b, bool isHole = false)
    {
        // Turning left or right must not depend on how the axes came out.
        if (Flat.Cross(a, b) < 0 != isHole) b = -1 * b;
        MoveTo(centre.X + a.X, centre.Y + a.Y);
        Arc(centre, a, b, 0, 2 * Math.PI);
        Close();
    }

    /// <summary>A closed run through points.</summary>
    public void Polygon(params ReadOnlySpan<Flat> corners)
    {
        MoveTo(corners[0].X, corners[0].Y);
        foreach (var corner in corners[1..]) LineTo(corner.X, corner.Y);
        Close();
    }

    // The ends of the pieces are enough: an arc is short against the limb it belongs to.
    private void Add(OutlineStep step)
    {
        _steps.Add(step);
        (_leftMm, _rightMm) = (Math.Min(_leftMm, step.XMm), Math.Max(_rightMm, step.XMm));
        (_topMm, _bottomMm) = (Math.Min(_topMm, step.YMm), Math.Max(_bottomMm, step.YMm));
    }

    private static double Short(double mm) => Math.Round(mm, 2);
}
