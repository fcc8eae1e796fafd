namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Collects the steps of one outline, to a hundredth of a millimetre: finer is not seen, and shorter files are drawn sooner.</summary>
internal sealed class FigurePath
{
    // A cubic follows this much of a circle within a thousandth of its radius.
    private const double LongestArcRad = 1.75;
    private readonly List<OutlineStep> _steps = [];

    public bool IsEmpty => _steps.Count == 0;

    public Outline Fill(Tone tone) => new(_steps, tone);

    public Outline Stroke(Tone tone, double widthMm) => new(_steps, tone, Math.Round(widthMm, 2));

    public void MoveTo(double xMm, double yMm) => _steps.Add(new(OutlineStepKind.Move, Short(xMm), Short(yMm)));

    public void LineTo(double xMm, double yMm) => _steps.Add(new(OutlineStepKind.Line, Short(xMm), Short(yMm)));

    public void Close() => _steps.Add(new(OutlineStepKind.Close));

    /// <summary>Part of an ellipse from where the path stands: centre + a·cos + b·sin, from one angle to another.</summary>
    public void Arc(Flat centre, Flat a, Flat b, double fromRad, double toRad)
    {
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
            _steps.Add(new(OutlineStepKind.Curve, Short(to.X), Short(to.Y), Short(c1.X), Short(c1.Y), Short(c2.X), Short(c2.Y)));
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

    private static double Short(double mm) => Math.Round(mm, 2);
}
