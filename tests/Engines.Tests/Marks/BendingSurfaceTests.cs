using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class BendingSurfaceTests
{
    [Fact]
    public void Of_NothingSeen_NoBend() => Assert.Equal((0, 0), BendingSurface.Of(210, 297, [], .25).At(100, 100));

    [Fact]
    public void Of_ASmoothBend_IsFoundBetweenItsPlaces()
    {
        var shifts = Places().Select(p => new PlaceShift(p.X, p.Y, Dx(p.X, p.Y), Dy(p.X, p.Y), .1)).ToList();
        var surface = BendingSurface.Of(210, 297, shifts, .25);
        var offs = new List<double>();
        for (var y = 20; y < 280; y += 13)
        {
            for (var x = 20; x < 190; x += 11)
            {
                var (dx, dy) = surface.At(x, y);
                offs.Add(double.Hypot(dx - Dx(x, y), dy - Dy(x, y)));
            }
        }
        // Bends of up to 4 mm: a twentieth of a millimetre usually, more only at the edges, where what is seen ends.
        Assert.InRange(offs.Average(), 0, .05);
        Assert.InRange(offs.Max(), 0, .2);
    }

    [Fact]
    public void Of_OneInTenWrong_MovesLittle()
    {
        var shifts = Places().Select((p, i) => new PlaceShift(p.X, p.Y, Dx(p.X, p.Y) + (i % 10 == 3 ? 1.5 : 0), Dy(p.X, p.Y), .15)).ToList();
        var surface = BendingSurface.Of(210, 297, shifts, .25);
        Assert.True(Places().Average(p => Math.Abs(surface.At(p.X, p.Y).DxMm - Dx(p.X, p.Y))) < .04);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    [InlineData(20)]
    public void Solve_ManyEquations_TheSolutionFits(int n)
    {
        var random = new Random(n);
        var rows = Enumerable.Range(0, n * (n + 2)).Select(_ => random.NextDouble() - .5).ToArray();
        var kept = (double[])rows.Clone();
        var solutions = new double[2 * n];
        Assert.True(LinearEquations.Solve(rows, n, solutions));
        for (var side = 0; side < 2; side++)
            for (var i = 0; i < n; i++)
                Assert.Equal(kept[i * (n + 2) + n + side], Enumerable.Range(0, n).Sum(j => kept[i * (n + 2) + j] * solutions[side * n + j]), 1e-9);
    }

    [Fact]
    public void Solve_TwiceTheSame_CannotBe() => Assert.False(LinearEquations.Solve([1, 2, 3, 2, 4, 6], 2, new double[2]));

    private static double Dx(double x, double y) => 2 * Math.Sin(x / 210 * Math.PI) * (y - 150) / 150;

    private static double Dy(double x, double y) => 3 * Math.Pow((x - 105) / 105, 2) - y / 200;

    private static IEnumerable<(double X, double Y)> Places()
    {
        for (var y = 10; y < 290; y += 22)
            for (var x = 12; x < 200; x += 21)
                yield return (x, y);
    }
}
