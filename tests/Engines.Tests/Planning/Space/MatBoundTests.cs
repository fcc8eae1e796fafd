using Slantwise.Engines.Planning.Space;

namespace Slantwise.Engines.Tests.Planning.Space;

public sealed class MatBoundTests
{
    [Fact]
    public void Of_TouchingMats_FillTheFloor()
    {
        // By hand: 10 × 6 m, mats of 2 × 1 m without any gap: 30; the bound is met by laying them so.
        Assert.Equal(30, MatBound.Of(new(10, 6, []), new(2, 1, 0, 0, false), 0));
        Assert.Equal(30, MatLayout.Of(new(10, 6, []), new(2, 1, 0, 0, false), new double[30]).Mats.Count);
    }

    [Fact]
    public void Of_Obstacles_TakeTheirFloorOnce()
    {
        // By hand: two obstacles of 2 × 2 m that share half, and one half outside: 60 - 6 - 2 = 52 m², 26 mats.
        HallObstacle[] things = [new(new(1, 1, 2, 2), true), new(new(2, 1, 2, 2), true), new(new(9, 3, 2, 2), false)];
        Assert.Equal(26, MatBound.Of(new(10, 6, things), new(2, 1, 0, 0, false), 0));
        // Where mats keep less from obstacles than half of what they keep from each other, nothing is taken off: 11 × 7 m² for 2 + 3 + π/4 m².
        Assert.Equal(13, MatBound.Of(new(10, 6, things), new(2, 1, 1, 0, false), 0));
    }

    [Fact]
    public void Of_CirclesApart_GoesByTheCircles()
    {
        // By hand: 10 × 6 m for circles of 4π m²: 4.
        Assert.Equal(4, MatBound.Of(new(10, 6, []), new(2, 1, 0, 0, true), 2));
        Assert.Equal(0, MatBound.Of(new(10, 3.9, []), new(2, 1, 0, 0, false), 2));
    }
}
