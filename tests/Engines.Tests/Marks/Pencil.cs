using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>What a hand does to a field.</summary>
internal static class Pencil
{
    public static void Tick(PaperRaster paper, MarkField f, double dark = .75, double widthMm = .5) =>
        paper.Stroke([At(f, -.28, .02), At(f, -.05, .28), At(f, .38, -.42)], widthMm, dark);

    public static void Cross(PaperRaster paper, MarkField f, double dark = .75, double widthMm = .5)
    {
        paper.Stroke([At(f, -.35, -.33), At(f, .33, .36)], widthMm, dark);
        paper.Stroke([At(f, .32, -.36), At(f, -.36, .31)], widthMm, dark);
    }

    public static void Fill(PaperRaster paper, MarkField f, double dark = .6)
    {
        var places = new List<(double, double)>();
        for (var i = 0; i <= 12; i++) places.Add(At(f, (i % 2 == 0 ? -1 : 1) * .42 * Math.Sqrt(1 - Math.Pow(i / 6.5 - .92, 2)), i / 12.0 * .8 - .4));
        paper.Stroke(places, .6, dark);
    }

    public static void HalfFill(PaperRaster paper, MarkField f) =>
        paper.Stroke([At(f, -.3, .1), At(f, .3, .1), At(f, -.28, .2), At(f, .27, .25), At(f, -.2, .32)], .6, .55);

    public static void CircleAround(PaperRaster paper, MarkField f) =>
        paper.Stroke([.. Enumerable.Range(0, 41).Select(i => At(f, .78 * Math.Cos(i * Math.PI / 19.5), .78 * Math.Sin(i * Math.PI / 19.5)))], .5, .75);

    public static void RubbedOut(PaperRaster paper, MarkField f)
    {
        var (x, y) = At(f, 0, 0);
        paper.Smear(x, y, f.HeightMm * .45, .1);
        Tick(paper, f, .13, .6);
    }

    private static (double X, double Y) At(MarkField f, double x, double y) => (f.XMm + f.WidthMm * (.5 + x), f.YMm + f.HeightMm * (.5 + y));
}
