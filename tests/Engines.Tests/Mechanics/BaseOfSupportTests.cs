using CsCheck;
using NetTopologySuite.Geometries;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class BaseOfSupportTests
{
    [Fact]
    public void Of_TwoFeetApart_AreaOfTheHull()
    {
        // By hand: feet .25 by .09 and .28 outside to outside make a rectangle of .25 by .28.
        var area = BaseOfSupport.Of([new(0, -.14), new(.25, -.14), new(0, -.05), new(.25, -.05), new(0, .05), new(.25, .05), new(0, .14), new(.25, .14)]);
        Assert.Equal(4, area.Corners.Count);
        Assert.Equal(.0700, area.AreaH2, 1e-12);
    }

    [Theory]
    // By hand: side 1, height √3/2; a unit square; a triangle of sides .4 and height .02.
    [InlineData(0.866025403784439, 0.0, 0.0, 1.0, 0.0, 0.5, 0.866025403784439)]
    [InlineData(0.05, -0.2, 0.0, 0.2, 0.0, 0.0, 0.02)]
    public void NarrownessFraction_OfATriangle_SmallestWidthOverLongestSide(
        double expected, double x1, double y1, double x2, double y2, double x3, double y3) =>
        Assert.Equal(expected, BaseOfSupport.Of([new(x1, y1), new(x2, y2), new(x3, y3)]).NarrownessFraction, 1e-12);

    [Fact]
    // By hand: width 1 over the diagonal √2.
    public void NarrownessFraction_OfASquare_WidthOverItsDiagonal() =>
        Assert.Equal(Math.Sqrt(.5), BaseOfSupport.Of([new(0, 0), new(1, 0), new(0, 1), new(1, 1)]).NarrownessFraction, 1e-12);

    [Fact]
    public void NarrownessFraction_OfAnyBase_IsAtMostOne() => CsCheck.Check.Sample(Floor.Point.Array[3, 12], points =>
        Assert.InRange(BaseOfSupport.Of(points).NarrownessFraction, 0, 1));

    [Fact]
    public void NarrownessFraction_OfALine_IsNone() =>
        Assert.Equal(0, BaseOfSupport.Of([new(0, 0), new(.1, .1), new(.2, .2)]).NarrownessFraction);

    [Fact]
    public void Of_RandomPoints_SameHullAsNetTopologySuite() => Floor.Point.Array[1, 24].Sample(points =>
    {
        // NetTopologySuite 2.6.0, ConvexHull. A point on a side, exactly, is a corner to one and not to the other by rounding.
        var theirs = new ConvexHullOf(points).Geometry;
        var ours = BaseOfSupport.Of(points);
        Assert.Equal(theirs.Area, ours.AreaH2, 1e-12);
        if (ours.Corners.Count < 3) return;
        var ring = GeometryFactory.Default.CreateLinearRing(
            ours.Corners.Append(ours.Corners[0]).Select(c => new Coordinate(c.XH, c.YH)).ToArray());
        Assert.All(theirs.Coordinates, c => Assert.True(ring.Distance(GeometryFactory.Default.CreatePoint(c)) < 1e-12));
        Assert.All(ours.Corners, c => Assert.Contains(theirs.Coordinates, t => t.X == c.XH && t.Y == c.YH));
    });

    [Fact]
    public void Of_PointsOnALatticeWithRepeats_NoThreeCornersOnALine() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 3], (x, y) => new Point2(x, y)).Array[1, 30].Sample(points =>
        {
            var corners = BaseOfSupport.Of(points).Corners;
            Assert.Equal(corners.Count, corners.Distinct().Count());
            if (corners.Count < 3) return;
            for (var i = 0; i < corners.Count; i++)
            {
                var (a, b, c) = (corners[i], corners[(i + 1) % corners.Count], corners[(i + 2) % corners.Count]);
                Assert.True((b.XH - a.XH) * (c.YH - a.YH) - (b.YH - a.YH) * (c.XH - a.XH) > 0);
            }
        });

    [Theory]
    // By hand: a square of ±1; back along the direction to the side, 0 inside, none where the way misses it.
    [InlineData(2, 0, 1, 0, 1)]
    [InlineData(1.5, .5, 0, 1, double.NaN)]
    [InlineData(.5, .5, 1, 0, 0)]
    [InlineData(-2, 0, 1, 0, double.NaN)]
    [InlineData(2, 2, .7071067811865476, .7071067811865476, 1.4142135623730951)]
    public void DistanceBackH_FromAPoint_ToWhereTheBaseBegins(double x, double y, double directionX, double directionY, double expectedH)
    {
        var square = BaseOfSupport.Of([new(1, 1), new(1, -1), new(-1, 1), new(-1, -1)]);
        var backH = square.DistanceBackH(new Point2(x, y), new Point2(directionX, directionY));
        Assert.True(double.IsNaN(expectedH) ? double.IsNaN(backH) : Math.Abs(expectedH - backH) < 1e-12, $"{backH}");
    }

    [Fact]
    public void Contains_AnyPoint_WhereItsMarginIsNotNegative() => Gen.Select(Floor.Point.Array[1, 12], Floor.Point).Sample((points, point) =>
    {
        var supported = BaseOfSupport.Of(points);
        var marginH = BalanceMargin.Of(new Point3(point.XH, point.YH, .5), supported).MarginH;
        // On a side, rounding decides; a line holds nothing.
        if (Math.Abs(marginH) > 1e-9) Assert.Equal(supported.Corners.Count > 2 && marginH > 0, supported.Contains(point));
    });

    [Fact]
    public void Of_NoPoint_SaysWhatIsNeeded() => Assert.Throws<ArgumentException>(() => BaseOfSupport.Of([]));

    private readonly record struct ConvexHullOf(Point2[] Points)
    {
        public Geometry Geometry => new NetTopologySuite.Algorithm.ConvexHull(
            Points.Select(p => new Coordinate(p.XH, p.YH)).ToArray(), GeometryFactory.Default).GetConvexHull();
    }
}
