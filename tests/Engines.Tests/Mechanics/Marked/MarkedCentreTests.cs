using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

public sealed class MarkedCentreTests
{
    [Fact]
    public void Of_LowerLimb_PublishedWorkedExample()
    {
        // Source: [Duarte2020] notebook on body segment parameters, with the mass and centre fractions of [Winter2009] table 4.1.
        // Ankle (84.9, 11.0), second metatarsal (101.1, 1.3), knee (86.4, 54.9), hip (72.1, 92.8) cm; answers printed in metres, so
        // within half a millimetre and the rounding of the inputs.
        MarkedPoint[] marks =
        [
            new(Landmark.Ankle, Side.Right, new(84.9, 11.0)), new(Landmark.Toe, Side.Right, new(101.1, 1.3)),
            new(Landmark.Knee, Side.Right, new(86.4, 54.9)), new(Landmark.Hip, Side.Right, new(72.1, 92.8)),
        ];
        MarkedSegment foot = new(.0145, .5, Landmark.Ankle, Landmark.Toe);
        MarkedSegment leg = new(.0465, .433, Landmark.Knee, Landmark.Ankle);
        MarkedSegment thigh = new(.100, .433, Landmark.Hip, Landmark.Knee);
        Near(93.0, 6.2, MarkedCentre.Of(marks, [foot]));
        Near(85.8, 35.9, MarkedCentre.Of(marks, [leg]));
        Near(78.3, 76.4, MarkedCentre.Of(marks, [thigh]));
        Near(81.8, 58.4, MarkedCentre.Of(marks, [foot, leg, thigh]));
    }

    [Fact]
    public void Of_OneMarkForBothSides_SameAsBothMarkedThere()
    {
        var apart = Drawn.Points(Held.Of("squat").Skeleton, Drawn.FromSide);
        var together = apart.Where(p => p.Side != Side.Right).Select(p => p with { Side = Side.Middle }).ToArray();
        var segments = MarkedSegment.Of(BodyTable.Mean, hasWaist: true);
        Assert.Equal(0, (MarkedCentre.Of(apart, segments) - MarkedCentre.Of(together, segments)).LengthPx, 1e-9);
    }

    [Fact]
    public void Of_PointMarkedTwice_TakesTheMean()
    {
        MarkedSegment thigh = new(1, .5, Landmark.Hip, Landmark.Knee);
        MarkedPoint[] marks =
        [
            new(Landmark.Hip, Side.Middle, new(0, 0)), new(Landmark.Hip, Side.Middle, new(4, 0)), new(Landmark.Knee, Side.Middle, new(2, 10)),
        ];
        Near(2, 5, MarkedCentre.Of(marks, [thigh]));
    }

    [Fact]
    public void Of_PointNotMarked_SaysWhich() => Assert.Contains("Knee", Assert.Throws<ArgumentException>(() => MarkedCentre.Of(
        [new(Landmark.Hip, Side.Middle, new(0, 0))], [new(1, .5, Landmark.Hip, Landmark.Knee)])).Message);

    private static void Near(double x, double y, PointPx point)
    {
        Assert.Equal(x, point.XPx, .06);
        Assert.Equal(y, point.YPx, .06);
    }
}
