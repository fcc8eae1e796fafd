using CsCheck;
using Slantwise.Engines.Planning.Space;

namespace Slantwise.Engines.Tests.Planning.Space;

public sealed class LayoutClashesTests
{
    private static readonly Hall Hall = new(20, 10, [new(new(9, 4, 2, 2), true)]);

    [Fact]
    public void Of_TwoMatsTooNear_NamesThemAndTheMetres()
    {
        // By hand: mats of 2 × 1 m, the first over x 3 to 5, the second over 5.4 to 7.4, level: .4 of the metre between them.
        var clash = Assert.Single(LayoutClashes.Of(Hall, new(2, 1, 1, 1, false), [new(new(4, 2), false, 0), new(new(6.4, 2), false, 0)]));
        Assert.Equal((ClashKind.MatAndMat, 0, 1), (clash.Kind, clash.Mat, clash.Other));
        Assert.Equal(0.6, clash.MissingM, 1e-9);
    }

    [Fact]
    public void Of_CornersFacing_MeasuresAcross()
    {
        // By hand: corners .6 and .8 apart are 1 m apart.
        Assert.Empty(LayoutClashes.Of(Hall, new(2, 1, 1, 1, false), [new(new(4, 2), false, 0), new(new(6.6, 3.8), false, 0)]));
        Assert.Single(LayoutClashes.Of(Hall, new(2, 1, 1.01, 1, false), [new(new(4, 2), false, 0), new(new(6.6, 3.8), false, 0)]));
    }

    [Fact]
    public void Of_AMatOverAWallAndAnObstacle_NamesAllOfIt()
    {
        // By hand: over y -.5 to .5, so 1.5 of the clear metre and 2 of the falling circle's 2 m are missing to the front; a turned one over x 7.5 to 8.5 is .5 from the obstacle, its middle 1 m.
        var clashes = LayoutClashes.Of(Hall, new(2, 1, 1, 1, false), [new(new(4, 0), false, 2), new(new(8, 5), true, 2)]);
        Assert.Equal(
            [(ClashKind.MatAndWall, 0, 2, 1.5), (ClashKind.FallAndWall, 0, 2, 2), (ClashKind.MatAndObstacle, 1, 0, 0.5), (ClashKind.FallAndObstacle, 1, 0, 1)],
            clashes.Select(c => (c.Kind, c.Mat, c.Other, Math.Round(c.MissingM, 9))));
    }

    [Fact]
    public void Of_FallingCircles_ReachOtherMatsAndEachOther()
    {
        // By hand: middles 3 m apart, the other mat begins 2 m from the middle; circles of 2.2 m reach .2 into it, each way, and 1.4 into one another.
        var mats = new PlacedMat[] { new(new(4, 2.5), false, 2.2), new(new(4, 7.5), false, 2.2), new(new(7, 2.5), false, 2.2) };
        var clashes = LayoutClashes.Of(Hall with { Obstacles = [] }, new(2, 1, 1, 1, true), mats);
        Assert.Equal(
            [(ClashKind.FallAndMat, 0, 2, 0.2), (ClashKind.FallAndFall, 0, 2, 1.4), (ClashKind.FallAndMat, 2, 0, 0.2)],
            clashes.Select(c => (c.Kind, c.Mat, c.Other, Math.Round(c.MissingM, 9))));
        Assert.DoesNotContain(LayoutClashes.Of(Hall, new(2, 1, 1, 1, false), mats), c => c.Kind == ClashKind.FallAndFall);
    }

    [Fact]
    public void Of_AllMovedAlike_ChangesNothingBetweenMats() => Layouts.Sample((mats, x, y) =>
    {
        var need = new MatNeed(1.8, 1.2, 1, 1, true);
        var wide = new Hall(200, 200, []);
        var moved = mats.Select(m => m with { Centre = new(m.Centre.XM + x, m.Centre.YM + y) }).ToArray();
        var (before, after) = (Between(LayoutClashes.Of(wide, need, mats)), Between(LayoutClashes.Of(wide, need, moved)));
        Assert.Equal(before.Select(c => (c.Kind, c.Mat, c.Other)), after.Select(c => (c.Kind, c.Mat, c.Other)));
        foreach (var (a, b) in before.Zip(after)) Assert.Equal(a.MissingM, b.MissingM, 1e-9);
    });

    [Fact]
    public void Of_AnyTwoMats_AgreesWithPointsAlongTheirSides() => Layouts.Sample((mats, _, _) =>
    {
        // The plain second version of a gap: the least distance of many points along the sides, in so far as they do not overlap.
        var need = new MatNeed(1.8, 1.2, 3, 0, false);
        var clashes = LayoutClashes.Of(new(200, 200, []), need, mats);
        for (var i = 0; i < mats.Length; i++)
        {
            for (var j = i + 1; j < mats.Length; j++)
            {
                var (a, b) = (mats[i].Covers(need), mats[j].Covers(need));
                var gapM = Points(a).Min(p => Points(b).Min(q => Math.Sqrt((p.XM - q.XM) * (p.XM - q.XM) + (p.YM - q.YM) * (p.YM - q.YM))));
                var isOverlapping = a.LeftXM < b.RightXM && b.LeftXM < a.RightXM && a.FrontYM < b.BackYM && b.FrontYM < a.BackYM;
                var clash = clashes.FirstOrDefault(c => c.Kind == ClashKind.MatAndMat && c.Mat == i && c.Other == j);
                if (isOverlapping) Assert.True(clash.MissingM >= 3);
                else Assert.Equal(Math.Max(0, 3 - gapM), clash.MissingM, 0.06);
            }
        }
    }, iter: 50);

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LayoutClashes.Of(Hall, new(2, 1, 1, 1, false), [new(new(double.NaN, 1), false, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LayoutClashes.Of(Hall, new(2, 1, 1, 1, false), [new(new(1, 1), false, -1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LayoutClashes.Of(Hall with { WidthXM = -1 }, new(2, 1, 1, 1, false), []));
    }

    private static LayoutClash[] Between(IReadOnlyList<LayoutClash> clashes) =>
        [.. clashes.Where(c => c.Kind is ClashKind.MatAndMat or ClashKind.FallAndMat or ClashKind.FallAndFall)];

    private static IEnumerable<FloorPoint> Points(FloorRectangle r) => Enumerable.Range(0, 41).SelectMany(i => new FloorPoint[]
    {
        new(r.LeftXM + r.WidthXM * i / 40, r.FrontYM), new(r.LeftXM + r.WidthXM * i / 40, r.BackYM),
        new(r.LeftXM, r.FrontYM + r.DepthYM * i / 40), new(r.RightXM, r.FrontYM + r.DepthYM * i / 40),
    });

    private static Gen<(PlacedMat[] Mats, double X, double Y)> Layouts { get; } = Gen.Select(
        Gen.Select(Gen.Double[60, 70], Gen.Double[60, 70], Gen.Bool, Gen.Double[0, 2]).Select(m => new PlacedMat(new(m.Item1, m.Item2), m.Item3, m.Item4)).Array[1, 6], Gen.Double[-40, 40], Gen.Double[-40, 40]);
}
