using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class CentreOfMassTests
{
    [Fact]
    public void Of_LowerLimb_PublishedWorkedExample()
    {
        // Source: [Duarte2020] notebook on body segment parameters, with the mass and centre fractions of [Winter2009] table 4.1.
        // Ankle (84.9, 11.0), second metatarsal (101.1, 1.3), knee (86.4, 54.9), hip (72.1, 92.8) cm; answers printed in metres.
        Point3 ankle = new(.849, 0, .110), toe = new(1.011, 0, .013), knee = new(.864, 0, .549), hip = new(.721, 0, .928);
        var foot = new PointMass(.0145, ankle + .5 * (toe - ankle));
        var leg = new PointMass(.0465, knee + .433 * (ankle - knee));
        var thigh = new PointMass(.100, hip + .433 * (knee - hip));
        Near(.930, .062, foot.Centre);
        Near(.858, .359, leg.Centre);
        Near(.783, .764, thigh.Centre);
        Near(.818, .584, CentreOfMass.Of([foot, leg, thigh]));
    }

    [Fact]
    public void Of_ReactionBoard_PublishedWorkedExample()
    {
        // Source: [Knight2017] ch. 12, question 57: board 2.5 m and 6.1 kg on a scale at the head that reads 25 kg, woman 60 kg.
        // The board and woman together balance where the scale's reading puts them: (25·2.5 − 6.1·1.25)/60 = .9145833 m.
        var together = CentreOfMass.Of([new(60, new(.9145833, 0, 0)), new(6.1, new(1.25, 0, 0))]);
        var loads = LoadShares.Of([new(0, 0), new(2.5, 0)], together.OnFloor);
        Assert.Equal(25, 66.1 * loads.Shares[1].ShareFraction, 1e-3);
    }

    [Theory]
    // Published exercises of two problem pages, re-solved; forces in newtons, lengths in metres.
    // A board of 3.00 m and 100 N with a person of 75 kg (735 N at 9.8 m/s²), the scale at the head reads 350 N: 900/735 m from the feet.
    [InlineData(735, 1.2245, 100, 1.5, 3.00, 350, 5e-2)]
    // Two scales at the ends of a weightless board of 2.2 m read 360 N and 750 N: the person's centre is .7135 m from the second.
    [InlineData(1110, 2.2 - .7135, 0, 1.1, 2.2, 750, 5e-2)]
    public void Of_PersonOnABoard_ScaleReadsWhatTheExercisePrints(
        double personN, double personM, double boardN, double boardM, double lengthM, double scaleN, double toleranceN)
    {
        var together = CentreOfMass.Of([new(personN, new(personM, 0, 0)), new(boardN, new(boardM, 0, 0))]);
        var loads = LoadShares.Of([new(0, 0), new(lengthM, 0)], together.OnFloor);
        Assert.Equal(scaleN, (personN + boardN) * loads.Shares[1].ShareFraction, toleranceN);
    }

    [Fact]
    public void Of_NoSegments_SaysWhatIsNeeded() => Assert.Throws<ArgumentException>(() => CentreOfMass.Of([]));

    [Fact]
    public void Of_NegativeMass_SaysWhatIsNeeded() =>
        Assert.Throws<ArgumentException>(() => CentreOfMass.Of([new(-.1, new(0, 0, 0))]));

    private static void Near(double xM, double zM, Point3 point)
    {
        Assert.Equal(xM, point.XH, 6e-4);
        Assert.Equal(zM, point.ZH, 6e-4);
    }
}
