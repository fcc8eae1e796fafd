using CsCheck;
using Slantwise.Engines.Planning.Space;

namespace Slantwise.Engines.Tests.Planning.Space;

public sealed class TeacherSightTests
{
    private static readonly Hall Hall = new(10, 10, [new(new(4, 4, 2, 2), true)]);
    private static readonly PlacedMat[] Mats = [new(new(5, 9), false, 0), new(new(1, 9), false, 0), new(new(9, 5), false, 0)];

    [Fact]
    public void Of_BehindAnObstacle_HidesOnlyWhatIsBehind()
    {
        // By hand: straight over the block to (5, 9); past it to (1, 9); to (9, 5) past its right side (at x = 6 the line is at y = 2).
        var sight = TeacherSight.Of(Hall, Mats, new(5, 1));
        Assert.Equal([0], sight.HiddenMats);
        Assert.Equal(2 / 3.0, sight.SeenFraction, 1e-12);
        Assert.Equal(Math.Sqrt(80), sight.FarthestM, 1e-12);
        Assert.Empty(TeacherSight.Of(Hall with { Obstacles = [new(new(4, 4, 2, 2), false)] }, Mats, new(5, 1)).HiddenMats);
    }

    [Fact]
    public void Of_ALineAlongASideOrThroughACorner_IsNotHidden()
    {
        Assert.Empty(TeacherSight.Of(Hall, [new(new(4, 9), false, 0)], new(4, 1)).HiddenMats);
        // x + y = 8 touches the corner (4, 4).
        Assert.Empty(TeacherSight.Of(Hall, [new(new(8, 0), false, 0)], new(0, 8)).HiddenMats);
        Assert.Single(TeacherSight.Of(Hall, [new(new(8, 0.2), false, 0)], new(0, 8.2)).HiddenMats);
    }

    [Fact]
    public void Best_AroundABlock_SeesAll()
    {
        var need = new MatNeed(2, 1, 1, 0, false);
        var best = TeacherSight.Best(Hall, need, Mats, 1)!;
        Assert.Empty(best.HiddenMats);
        // The plain second version: every place of the grid.
        var places = from j in Enumerable.Range(0, 10) from i in Enumerable.Range(0, 10) select new FloorPoint(i + 0.5, j + 0.5);
        var free = places.Where(p => !(p.XM is > 4 and < 6 && p.YM is > 4 and < 6) && Mats.All(m => m.Covers(need) is var c && !(p.XM >= c.LeftXM && p.XM <= c.RightXM && p.YM >= c.FrontYM && p.YM <= c.BackYM)));
        var nearest = free.Select(p => TeacherSight.Of(Hall, Mats, p)).Where(s => s.HiddenMats.Count == 0 && s.SpanDeg <= 180).Min(s => s.FarthestM);
        Assert.Equal(nearest, best.FarthestM, 1e-6);
    }

    [Fact]
    public void Of_MatsAround_SpanIsAllRoundLessTheWidestGap()
    {
        // By hand from (5, 1): (9, 5) at 45 degrees, (5, 9) at 90, (1, 9) at 90 + atan(4/8): 71.565 in all. From the middle of four corners three quarters of a turn.
        Assert.Equal(45 + Math.Atan(0.5) * 180 / Math.PI, TeacherSight.Of(Hall, Mats, new(5, 1)).SpanDeg, 1e-9);
        PlacedMat[] corners = [new(new(0, 0), false, 0), new(new(0, 8), false, 0), new(new(8, 0), false, 0), new(new(8, 8), false, 0)];
        Assert.Equal(270, TeacherSight.Of(new(10, 10, []), corners, new(4, 4)).SpanDeg, 1e-9);
        Assert.Equal(0, TeacherSight.Of(Hall, [Mats[0]], new(5, 1)).SpanDeg);
    }

    [Fact]
    public void Best_ManyMats_HasNoneBehindTheBackAndStandsInNoCircle()
    {
        var (hall, need) = (new Hall(18, 10, []), new MatNeed(1.83, 1.22, 1, 1, false));
        var mats = MatLayout.Of(hall, need, [.. Enumerable.Repeat(1.7, 8)]).Mats;
        var best = TeacherSight.Best(hall, need, mats, 1)!;
        Assert.True(best.SpanDeg <= 180 + 1e-6);
        Assert.All(mats, m => Assert.True(Math.Sqrt(Math.Pow(m.Centre.XM - best.Place.XM, 2) + Math.Pow(m.Centre.YM - best.Place.YM, 2)) >= 1.7));
    }

    [Fact]
    public void Of_AnyLine_AgreesWithPointsAlongIt() => Gen.Select(Gen.Double[0, 10], Gen.Double[0, 10], Gen.Double[0, 10], Gen.Double[0, 10]).Sample((x, y, u, v) =>
    {
        var isInside = Enumerable.Range(1, 1999).Any(i => x + (u - x) * i / 2000 is > 4.01 and < 5.99 && y + (v - y) * i / 2000 is > 4.01 and < 5.99);
        var isNear = Enumerable.Range(0, 2001).Any(i => x + (u - x) * i / 2000 is > 3.99 and < 6.01 && y + (v - y) * i / 2000 is > 3.99 and < 6.01);
        var isHidden = TeacherSight.Of(Hall, [new(new(u, v), false, 0)], new(x, y)).HiddenMats.Count == 1;
        Assert.True(isHidden ? isNear : !isInside);
        // What is seen from here sees back.
        Assert.Equal(isHidden, TeacherSight.Of(Hall, [new(new(x, y), false, 0)], new(u, v)).HiddenMats.Count == 1);
    });

    [Fact]
    public void Best_NoPlaceOrOddStep_IsNoneOrThrows()
    {
        Assert.Null(TeacherSight.Best(new(4, 4, [new(new(0, 0, 4, 4), false)]), new(2, 1, 1, 0, false), [], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TeacherSight.Best(Hall, new(2, 1, 1, 0, false), [], 0));
    }
}
