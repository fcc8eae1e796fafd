using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>A circle in dashes.</summary>
internal static class DashedCircle
{
    /// <summary>As many dashes as come nearest to a length, all alike.</summary>
    public static Shape Of(double xMm, double yMm, double radiusMm, Tone tone, double strokeMm, double dashMm = 1.6)
    {
        var count = Math.Max(8, (int)Math.Round(2 * Math.PI * radiusMm / (1.75 * dashMm)));
        var turn = 2 * Math.PI / count;
        var pen = new Pen();
        for (var i = 0; i < count; i++) Arc(pen, xMm, yMm, radiusMm, i * turn, i * turn + turn / 1.75);
        return pen.Stroke(strokeMm, tone);
    }

    /// <summary>An arc of at most a quarter turn as one cubic; the error is below a thousandth of the radius.</summary>
    public static void Arc(Pen pen, double xMm, double yMm, double radiusMm, double fromRad, double toRad, bool moves = true)
    {
        var k = 4.0 / 3 * Math.Tan((toRad - fromRad) / 4) * radiusMm;
        var ((s1, c1), (s2, c2)) = (Math.SinCos(fromRad), Math.SinCos(toRad));
        var (x1, y1, x2, y2) = (xMm + radiusMm * c1, yMm - radiusMm * s1, xMm + radiusMm * c2, yMm - radiusMm * s2);
        if (moves) pen.MoveTo(x1, y1);
        pen.CurveTo(x1 - k * s1, y1 - k * c1, x2 + k * s2, y2 + k * c2, x2, y2);
    }
}
