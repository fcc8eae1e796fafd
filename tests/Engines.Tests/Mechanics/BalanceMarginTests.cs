using CsCheck;
using NetTopologySuite.Geometries;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class BalanceMarginTests
{
    private static readonly BaseOfSupport TwoFeet = BaseOfSupport.Of([new(0, -.14), new(.25, -.14), new(0, .14), new(.25, .14)]);

    [Fact]
    public void Of_CentreOverTwoFeet_TipsFirstOverTheNearestSide()
    {
        var margin = BalanceMargin.Of(new Point3(.125, 0, 1), TwoFeet);
        Assert.Equal(.125, margin.MarginH, 1e-12);
        // By hand: atan(.125 / 1) = 7.125016349°.
        Assert.Equal(7.125016349, margin.Edges[margin.WeakestEdge].TippingRad * 180 / Math.PI, 1e-6);
    }

    [Fact]
    public void Of_TextbookBody_EnergyToTip()
    {
        // By hand, 40 kg, b = .125 m, h = .8 m, g = 9.80665 m/s²: m g (√(h²+b²) − h) = 3.80762 J; here per body weight, in metres.
        var margin = BalanceMargin.Of(new Point3(.125, 0, .8), TwoFeet);
        Assert.Equal(3.80762, 40 * 9.80665 * margin.Edges[margin.WeakestEdge].EnergyToTipH, 1e-4);
    }

    [Fact]
    public void Of_CentroidOfEquilateralTriangle_InnerRadius()
    {
        // √3/6 of the side.
        var margin = BalanceMargin.Of(new Point3(.5, Math.Sqrt(3) / 6, .5), BaseOfSupport.Of([new(0, 0), new(1, 0), new(.5, Math.Sqrt(3) / 2)]));
        Assert.Equal(0.288675134594813, margin.MarginH, 1e-12);
        Assert.True(margin.IsHeld);
    }

    [Fact]
    public void Of_CentreOutside_IsNotHeldAndMeasuresToTheBase()
    {
        // Beyond the corner (.25, .14) by (.03, .04): 5 hundredths away, more than from either side's line.
        var margin = BalanceMargin.Of(new Point3(.28, .18, .5), TwoFeet);
        Assert.Equal(-.05, margin.MarginH, 1e-12);
        Assert.False(margin.IsHeld);
    }

    [Fact]
    public void Of_AnyBaseAndCentre_SameDistanceAsNetTopologySuite() => Gen.Select(Floor.Point.Array[3, 12], Floor.CoordinateH, Floor.CoordinateH).Sample((points, x, y) =>
    {
        var hull = new NetTopologySuite.Algorithm.ConvexHull(points.Select(p => new Coordinate(p.XH, p.YH)).ToArray(), GeometryFactory.Default).GetConvexHull();
        if (hull is not Polygon polygon) return;
        var point = GeometryFactory.Default.CreatePoint(new Coordinate(x, y));
        var expectedH = polygon.Contains(point) ? polygon.ExteriorRing.Distance(point) : -polygon.Distance(point);
        Assert.Equal(expectedH, BalanceMargin.Of(new Point3(x, y, .5), BaseOfSupport.Of(points)).MarginH, 1e-9);
    });

    [Fact]
    public void Of_BodyTurnedAboutTheVertical_NothingChanges() =>
        Gen.Select(Floor.Point.Array[3, 9], Gen.Double[0, 6.28], Floor.CoordinateH).Sample((points, turnRad, x) =>
            {
                Point2 Turned(Point2 p) => new(p.XH * Math.Cos(turnRad) - p.YH * Math.Sin(turnRad), p.XH * Math.Sin(turnRad) + p.YH * Math.Cos(turnRad));
                var at = Turned(new Point2(x, .1));
                var before = BalanceMargin.Of(new Point3(x, .1, .4), BaseOfSupport.Of(points));
                var after = BalanceMargin.Of(new Point3(at.XH, at.YH, .4), BaseOfSupport.Of(points.Select(Turned).ToArray()));
                Assert.Equal(before.MarginH, after.MarginH, 1e-9);
            });

    [Fact]
    public void Of_CentreOnTheFloor_SaysWhatIsNeeded() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BalanceMargin.Of(new Point3(0, 0, 0), TwoFeet));
}
