using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class HomographyTests
{
    private static readonly Gen<PixelPoint[]> Quads = Gen.Select(Gen.Double[-80, 80].Array[8], Gen.Double[0, 2 * Math.PI], (off, turn) =>
    {
        (double X, double Y)[] square = [(-400, -500), (400, -500), (400, 500), (-400, 500)];
        return square.Select((c, i) => (X: c.X + off[2 * i], Y: c.Y + off[2 * i + 1]))
            .Select(c => new PixelPoint(1000 + Math.Cos(turn) * c.X - Math.Sin(turn) * c.Y, 1000 + Math.Sin(turn) * c.X + Math.Cos(turn) * c.Y)).ToArray();
    });

    [Fact]
    public void Of_FourCorners_IsTheClosedForm() => Quads.Sample(corners =>
    {
        var (ours, closed) = (Through(corners), QuadMap.Of(210, 297, corners));
        for (var i = 0; i < 25; i++)
        {
            var (seen, (x, y)) = (ours.At(i % 5 * 50, i / 5 * 70), closed.At(i % 5 * 50, i / 5 * 70));
            Assert.Equal(x, seen.XPx, 1e-6);
            Assert.Equal(y, seen.YPx, 1e-6);
        }
    }, iter: 200);

    [Fact]
    public void Back_OfAnyQuad_UndoesIt() => Quads.Sample(corners =>
    {
        var flat = Through(corners);
        var there = flat.At(70, 200);
        var back = flat.Back()!.At(there.XPx, there.YPx);
        Assert.Equal(70, back.XPx, 1e-7);
        Assert.Equal(200, back.YPx, 1e-7);
    }, iter: 200);

    [Fact]
    public void Scale_OfAnyQuad_IsTheRootOfASmallSquare() => Quads.Sample(corners =>
    {
        var flat = Through(corners);
        var (a, b, c) = (flat.At(100, 100), flat.At(100.001, 100), flat.At(100, 100.001));
        var area = (b.XPx - a.XPx) * (c.YPx - a.YPx) - (b.YPx - a.YPx) * (c.XPx - a.XPx);
        Assert.Equal(Math.Sqrt(area) / .001, flat.Scale(100, 100), 1e-3);
    }, iter: 100);

    [Fact]
    public void Of_ManyNoisyPlaces_IsNoFartherThanByTheSmallestSingularVector()
    {
        // A second version: the plain direct linear transformation by the singular value decomposition of MathNet, on the same places.
        var random = new Random(3);
        var truth = QuadMap.Of(210, 297, [new(100, 120), new(1500, 60), new(1620, 2000), new(40, 1900)]);
        for (var trial = 0; trial < 20; trial++)
        {
            var points = Enumerable.Range(0, 12).Select(_ =>
            {
                var (x, y) = (random.NextDouble() * 210, random.NextDouble() * 297);
                var (u, v) = truth.At(x, y);
                return new PlacedPoint(x, y, u + random.NextDouble() - .5, v + random.NextDouble() - .5);
            }).ToArray();
            var svd = BySvd(points);
            double ours = Square(points, Homography.Of(points)!.At), theirs = Square(points, (x, y) => At(svd, x, y));
            Assert.True(ours <= 1.0001 * theirs, $"{ours} against {theirs}");
        }
    }

    [Fact]
    public void Of_PlacesInALine_None() =>
        Assert.Null(Homography.Of([new(0, 0, 0, 0), new(10, 10, 5, 5), new(20, 20, 10, 10), new(30, 30, 15, 15)]));

    [Fact]
    public void Of_ThreePlaces_None() => Assert.Null(Homography.Of([new(0, 0, 0, 0), new(10, 0, 5, 5), new(0, 20, 10, 10)]));

    private static Homography Through(PixelPoint[] corners) => Homography.Of([
        new(0, 0, corners[0].XPx, corners[0].YPx), new(210, 0, corners[1].XPx, corners[1].YPx),
        new(210, 297, corners[2].XPx, corners[2].YPx), new(0, 297, corners[3].XPx, corners[3].YPx)])!;

    private static double Square(PlacedPoint[] points, Func<double, double, PixelPoint> at) => points.Sum(p =>
    {
        var seen = at(p.XMm, p.YMm);
        return (seen.XPx - p.XPx) * (seen.XPx - p.XPx) + (seen.YPx - p.YPx) * (seen.YPx - p.YPx);
    });

    // In units of 100 mm and 1000 pixels, which is scaling enough.
    private static Vector<double> BySvd(PlacedPoint[] points)
    {
        var rows = points.SelectMany(p => new[]
        {
            new[] { p.XMm / 100, p.YMm / 100, 1, 0, 0, 0, -p.XPx / 1000 * p.XMm / 100, -p.XPx / 1000 * p.YMm / 100, -p.XPx / 1000 },
            [0, 0, 0, p.XMm / 100, p.YMm / 100, 1, -p.YPx / 1000 * p.XMm / 100, -p.YPx / 1000 * p.YMm / 100, -p.YPx / 1000],
        }).ToArray();
        return Matrix<double>.Build.DenseOfRowArrays(rows).Svd().VT.Row(8);
    }

    private static PixelPoint At(Vector<double> m, double x, double y)
    {
        (x, y) = (x / 100, y / 100);
        var w = m[6] * x + m[7] * y + m[8];
        return new(1000 * (m[0] * x + m[1] * y + m[2]) / w, 1000 * (m[3] * x + m[4] * y + m[5]) / w);
    }
}
