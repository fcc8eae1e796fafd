using CsCheck;
using Slantwise.Engines.Planning.Space;

namespace Slantwise.Engines.Tests.Planning.Space;

public sealed class MatLayoutTests
{
    private static readonly MatNeed Small = new(2, 1, 1, 1, false);

    [Fact]
    public void Of_SmallHall_FitsWhatFitsByHand()
    {
        // By hand: 8 × 4 m between the clear strips. Along x three mats of 2 m with 1 m between take 8 m; two rows of 1 m with 1 m between take 3 m. Six.
        // Each mat with half a metre around, corners round, takes 2 + 3 + π/4 m² of 9 × 5 m²: at most seven.
        var layout = MatLayout.Of(new(10, 6, []), Small, new double[6]);
        Assert.Equal(6, layout.Mats.Count);
        Assert.InRange(layout.MostLaidOut, 6, 7);
        Assert.Equal(7, layout.Bound);
        Assert.All(layout.Mats, m => Assert.True(m.Centre is { XM: >= 1 and <= 9, YM: >= 1 and <= 5 }));
    }

    [Fact]
    public void Of_FewMats_SpreadOut()
    {
        // By hand: two mats in 8 × 4 m; end to end with nothing between but what 8 m leave: 4 m, 3 more than the clear metre. Turned ones leave 6 m. Within the step of the halving.
        var layout = MatLayout.Of(new(10, 6, []), Small, new double[2]);
        Assert.Equal(2, layout.Mats.Count);
        Assert.InRange(layout.SpareClearM, 4.9, 5.4);
    }

    [Fact]
    public void Of_NoRoom_HasNoMat()
    {
        var layout = MatLayout.Of(new(2.5, 6, []), Small, new double[3]);
        Assert.Empty(layout.Mats);
        Assert.Equal((0, 0), (layout.MostLaidOut, layout.Bound));
    }

    [Fact]
    public void Of_ASchoolHall_TakesAClassOfMats()
    {
        // 18 × 10 m with a stage; mats of 1.83 × 1.22 m. What came out is written down, so that a change of the heuristic is seen.
        var hall = new Hall(18, 10, [new(new(0, 8, 6, 2), true)]);
        var layout = MatLayout.Of(hall, new(1.83, 1.22, 1, 1, false), [.. Enumerable.Repeat(1.7, 14)]);
        Assert.Equal(14, layout.Mats.Count);
        Assert.Equal(1, layout.Sight!.SeenFraction);
        Assert.InRange(layout.MostLaidOut, 14, layout.Bound);
    }

    [Fact]
    public void Of_AnyHall_NothingClashesAndTheBoundHolds() => Halls.Sample((hall, need, fallsM) =>
    {
        var layout = MatLayout.Of(hall, need, fallsM);
        Assert.Empty(LayoutClashes.Of(hall, need, layout.Mats));
        Assert.True(layout.Mats.Count <= Math.Min(fallsM.Length, layout.MostLaidOut) && layout.MostLaidOut <= layout.Bound);
        Assert.All(layout.Mats, m =>
        {
            var covers = m.Covers(need);
            Assert.True(covers.LeftXM >= -1e-6 && covers.FrontYM >= -1e-6 && covers.RightXM <= hall.WidthXM + 1e-6 && covers.BackYM <= hall.DepthYM + 1e-6);
        });
        Assert.Empty(LayoutClashes.Of(hall, need with { ClearM = need.ClearM + layout.SpareClearM }, layout.Mats));
        Assert.Equal(layout.Mats, MatLayout.Of(hall, need, fallsM).Mats);
    }, iter: 40);

    [Fact]
    public void Of_DifferentCircles_PlacesEachWithItsOwn()
    {
        // By hand: a circle of 2.9 m stands in a hall 6 m deep only between y = 2.9 and 3.1; the two without a circle need not.
        var layout = MatLayout.Of(new(12, 6, []), Small, [0, 2.9, 0]);
        Assert.Equal([0, 0, 2.9], layout.Mats.Select(m => m.FallM).Order());
        Assert.InRange(layout.Mats.Single(m => m.FallM > 0).Centre.YM, 2.9 - 1e-6, 3.1 + 1e-6);
        // Where all do not fit, those with the largest circles lie.
        Assert.Equal([2.9], MatLayout.Of(new(6, 6, []), Small with { WallClearM = 2 }, [0, 2.9, 0]).Mats.Select(m => m.FallM));
    }

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(10, 6, []), Small, new double[101]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(10, 6, []), Small, [11]));
    }

    [Fact]
    public void Of_HallOrMatWithoutSize_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(0, 6, []), Small, [0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(10, double.NaN, []), Small, [0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(10, 6, [new(new(1, 1, 0, 1), true)]), Small, [0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(10, 6, []), Small with { WidthM = 3 }, [0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MatLayout.Of(new(10, 6, []), Small with { ClearM = -1 }, [0]));
    }

    internal static Gen<(Hall Hall, MatNeed Need, double[] FallsM)> Halls { get; } =
        from size in Gen.Select(Gen.Int[4, 20], Gen.Int[4, 14])
        from things in Gen.Select(Gen.Int[-1, 18], Gen.Int[-1, 12], Gen.Int[1, 4], Gen.Int[1, 3], Gen.Bool).Array[0, 3]
        from mat in Gen.Select(Gen.Int[10, 25], Gen.Int[6, 10], Gen.Int[0, 20], Gen.Int[0, 15], Gen.Bool)
        from falls in Gen.Int[0, 22].Array[0, 20]
        select (
            new Hall(size.Item1, size.Item2, [.. things.Select(t => new HallObstacle(new(t.Item1, t.Item2, t.Item3, t.Item4), t.Item5))]),
            new MatNeed(mat.Item1 / 10.0, mat.Item2 / 10.0, mat.Item3 / 10.0, mat.Item4 / 10.0, mat.Item5), falls.Select(f => f / 10.0).ToArray());
}
