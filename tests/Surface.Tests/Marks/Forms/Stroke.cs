namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>One movement of a pen or a printed line: from point to point, with the width it has at each end.</summary>
internal sealed record Stroke(IReadOnlyList<Point> Points, double StartWidthMm, double EndWidthMm)
{
    public Stroke(IReadOnlyList<Point> points, double widthMm) : this(points, widthMm, widthMm)
    {
    }

    /// <summary>A closed ellipse.</summary>
    public static Stroke Ellipse(Point middle, double radiusXMm, double radiusYMm, double widthMm, double turnedRad = 0, double sweepRad = 2 * Math.PI)
    {
        var points = new Point[33];
        for (var i = 0; i < points.Length; i++)
        {
            var (sin, cos) = Math.SinCos(turnedRad + sweepRad * i / (points.Length - 1));
            points[i] = middle + new Point(radiusXMm * cos, radiusYMm * sin);
        }
        return new(points, widthMm);
    }

    public static Stroke Rectangle(double xMm, double yMm, double widthMm, double heightMm, double lineMm) => new(
        [new(xMm, yMm), new(xMm + widthMm, yMm), new(xMm + widthMm, yMm + heightMm), new(xMm, yMm + heightMm), new(xMm, yMm)], lineMm);
}
