namespace Slantwise.Engines.Marks;

/// <summary>A place on a field's outline, from the field's middle, and which way is out.</summary>
internal readonly record struct OutlinePoint(double XMm, double YMm, double OutX, double OutY)
{
    private const int RoundCount = 40;
    private const double ApartMm = .6;

    /// <summary>Places evenly along an outline; none in the corners of a box, where out is not clear.</summary>
    public static OutlinePoint[] Along(MarkField field)
    {
        var (a, b) = (field.WidthMm / 2, field.HeightMm / 2);
        if (!field.IsRound) return [.. Sides(a, b)];
        var points = new OutlinePoint[RoundCount];
        for (var i = 0; i < RoundCount; i++)
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * i / RoundCount);
            var length = double.Hypot(cosine / a, sine / b);
            points[i] = new(a * cosine, b * sine, cosine / a / length, sine / b / length);
        }
        return points;
    }

    private static IEnumerable<OutlinePoint> Sides(double a, double b)
    {
        var (across, down) = (Math.Max(3, (int)(2 * a / ApartMm)), Math.Max(3, (int)(2 * b / ApartMm)));
        for (var i = 0; i < across; i++)
        {
            var x = a * .86 * (2.0 * i / (across - 1) - 1);
            yield return new(x, -b, 0, -1);
            yield return new(x, b, 0, 1);
        }
        for (var i = 0; i < down; i++)
        {
            var y = b * .86 * (2.0 * i / (down - 1) - 1);
            yield return new(-a, y, -1, 0);
            yield return new(a, y, 1, 0);
        }
    }
}
