using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>The signs on a hall's drawing: each says by its shape what its colour says too.</summary>
internal static class HallSigns
{
    /// <summary>From the middle of a capital to its baseline, of the type size.</summary>
    private const double HalfCapital = 0.334 * 25.4 / 72;

    /// <summary>Text with its middle at a point.</summary>
    public static Text Centred(double xMm, double yMm, string words, double sizePt, Tone tone, TextWeight weight = TextWeight.Regular) =>
        new(xMm, yMm + sizePt * HalfCapital, words, sizePt, tone, TextAnchor.Middle, weight);

    /// <summary>Too near: a triangle with an exclamation mark.</summary>
    public static IEnumerable<Shape> Clash(double xMm, double yMm, double sizeMm)
    {
        var (half, top, foot) = (0.58 * sizeMm, yMm - 0.55 * sizeMm, yMm + 0.45 * sizeMm);
        yield return new Outline(new Pen().MoveTo(xMm, top).LineTo(xMm + half, foot).LineTo(xMm - half, foot).Close().Fill(Tone.Caution).Steps, Tone.Caution, 0.22 * sizeMm, Tone.Caution);
        yield return new Line(xMm, yMm - 0.22 * sizeMm, xMm, yMm + 0.1 * sizeMm, 0.14 * sizeMm, Tone.Ground);
        yield return new Disc(xMm, yMm + 0.3 * sizeMm, 0.09 * sizeMm, Tone.Ground);
    }

    /// <summary>Not seen: an eye, crossed out.</summary>
    public static IEnumerable<Shape> Hidden(double xMm, double yMm, double sizeMm)
    {
        var (half, lid) = (0.5 * sizeMm, 0.42 * sizeMm);
        yield return new Disc(xMm, yMm, 0.68 * sizeMm, Tone.Ground);
        yield return new Disc(xMm, yMm, 0.68 * sizeMm, Tone.Ink, 0.07 * sizeMm);
        yield return new Pen().MoveTo(xMm - half, yMm).CurveTo(xMm - half / 2, yMm - lid, xMm + half / 2, yMm - lid, xMm + half, yMm)
            .CurveTo(xMm + half / 2, yMm + lid, xMm - half / 2, yMm + lid, xMm - half, yMm).Close().Stroke(0.09 * sizeMm, Tone.Ink);
        yield return new Disc(xMm, yMm, 0.14 * sizeMm, Tone.Ink);
        yield return new Line(xMm - 0.42 * sizeMm, yMm + 0.4 * sizeMm, xMm + 0.42 * sizeMm, yMm - 0.4 * sizeMm, 0.12 * sizeMm, Tone.Ink);
    }

    /// <summary>A station: its letter in a dark disc.</summary>
    public static IEnumerable<Shape> Station(double xMm, double yMm, double sizePt, string letter)
    {
        var radiusMm = 0.64 * sizePt * 25.4 / 72;
        yield return new Disc(xMm, yMm, radiusMm + 0.25, Tone.Ground);
        yield return new Disc(xMm, yMm, radiusMm, Tone.Ink);
        yield return Centred(xMm, yMm, letter, sizePt, Tone.Ground, TextWeight.Bold);
    }

    /// <summary>The teacher from above, shoulders across the way faced.</summary>
    public static IEnumerable<Shape> Teacher(double xMm, double yMm, double sizeMm, double facingRad)
    {
        var (sine, cosine) = Math.SinCos(facingRad);
        (double X, double Y) At(double ahead, double left) => (xMm + sizeMm * (ahead * cosine - left * sine), yMm - sizeMm * (ahead * sine + left * cosine));
        Pen Through(Pen pen, (double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => pen.CurveTo(a.X, a.Y, b.X, b.Y, c.X, c.Y);
        var left = At(0, 0.62);
        var body = new Pen().MoveTo(left.X, left.Y);
        Through(body, At(0.4, 0.62), At(0.4, -0.62), At(0, -0.62));
        Through(body, At(-0.4, -0.62), At(-0.4, 0.62), left);
        var shape = body.Close().Fill(Tone.Second);
        yield return new Outline(shape.Steps, Tone.Ground, 0.16 * sizeMm, Tone.Second);
        var (tip, one, other) = (At(0.66, 0), At(0.3, 0.2), At(0.3, -0.2));
        yield return new Pen().MoveTo(tip.X, tip.Y).LineTo(one.X, one.Y).LineTo(other.X, other.Y).Close().Fill(Tone.Second);
        yield return new Disc(xMm, yMm, 0.27 * sizeMm, Tone.Ground);
        yield return new Disc(xMm, yMm, 0.2 * sizeMm, Tone.Second);
    }
}
