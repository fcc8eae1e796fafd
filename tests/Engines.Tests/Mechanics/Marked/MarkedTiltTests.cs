using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

public sealed class MarkedTiltTests
{
    [Fact]
    public void Of_OneContact_LevelIsThePicturesEdge()
    {
        var tilt = MarkedBalance.Of(Drawn.Picture(Held.Of("stork"), Drawn.FromSide)).Tilt;
        Assert.Equal(0, tilt.TiltRad);
        Assert.Equal(MarkedTilt.HandHeldSdRad, tilt.TiltSdRad);
        Assert.True(double.IsNaN(tilt.FloorTiltRad));
    }

    [Fact]
    public void Of_FloorAndEdgeDisagree_WeighedByTheirVariances()
    {
        // By hand: hands and toes about .72 H apart, each the mean of two clicks; height off by √(.01²/2 + .03²) = .0308 H each, so the line is off
        // by .0308·√2 over the distance; the mean of two estimates weighted by 1/variance.
        var picture = MarkedBalanceTests.Both(Drawn.Picture(Held.Of("support"), Drawn.FromSide));
        var middles = picture.Contacts.Select(c => c.Ends.Average(e => e.At.XPx) / Drawn.PxPerH).ToArray();
        var floorSdRad = Math.Sqrt(.00095) * Math.Sqrt(2) / Math.Abs(middles[0] - middles[1]);
        // One contact marked 3° higher than the other.
        var raised = picture with
        {
            Contacts = [picture.Contacts[0], picture.Contacts[1] with { Ends = [.. picture.Contacts[1].Ends.Select(e => e with { At = e.At + new PointPx(0, Math.Tan(3 * Math.PI / 180) * (middles[1] - middles[0]) * Drawn.PxPerH) })] }],
        };
        var tilt = MarkedBalance.Of(raised).Tilt;
        Assert.Equal(3 * Math.PI / 180, tilt.FloorTiltRad, 1e-9);
        Assert.Equal(floorSdRad, tilt.FloorSdRad, 1e-9);
        var (edge, floor) = (1 / (MarkedTilt.HandHeldSdRad * MarkedTilt.HandHeldSdRad), 1 / (tilt.FloorSdRad * tilt.FloorSdRad));
        Assert.Equal(floor / (edge + floor) * 3 * Math.PI / 180, tilt.TiltRad, 1e-9);
        Assert.Equal(1 / Math.Sqrt(edge + floor), tilt.TiltSdRad, 1e-9);
        Assert.False(tilt.IsFloorAslant);
    }

    [Fact]
    public void Of_FloorFarAslant_Cautions()
    {
        var picture = MarkedBalanceTests.Both(Drawn.Picture(Held.Of("support"), Drawn.FromSide));
        var (sine, cosine) = Math.SinCos(12 * Math.PI / 180);
        var aslant = picture.Mapped(p => new(cosine * p.XPx - sine * p.YPx, sine * p.XPx + cosine * p.YPx));
        Assert.Contains(MarkedCaution.FloorAslant, MarkedBalance.Of(aslant).Cautions);
        Assert.DoesNotContain(MarkedCaution.FloorAslant, MarkedBalance.Of(aslant with { Level = LevelBasis.Floor }).Cautions);
    }

    [Fact]
    public void Of_TwoContactsBehindEachOther_SayNothingAboutLevel()
    {
        // Two feet in line with the camera, the farther one higher on the picture by 5 cm of 1.40 m.
        var picture = Drawn.Picture(Held.Of("standing"), Drawn.FromSide);
        var deep = picture with { Contacts = [picture.Contacts[0] with { Ends = [.. picture.Contacts[0].Ends.Select(e => e with { At = e.At + new PointPx(.4, -14) })] }, picture.Contacts[1]] };
        Assert.Equal(0, MarkedBalance.Of(deep).Tilt.TiltRad, 1e-3);
        Assert.Equal(MarkedTilt.HandHeldSdRad, MarkedBalance.Of(deep).Tilt.TiltSdRad, 1e-4);
    }
}
