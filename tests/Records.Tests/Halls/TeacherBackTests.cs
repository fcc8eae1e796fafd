using CsCheck;
using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Halls;

namespace Slantwise.Records.Tests.Halls;

public sealed class TeacherBackTests
{
    private static readonly Gen<(FloorPoint Place, PlacedMat[] Mats)> Any =
        from place in Gen.Select(Gen.Int[0, 40], Gen.Int[0, 24], (x, y) => new FloorPoint(x / 2.0, y / 2.0))
        from mats in Gen.Select(Gen.Int[0, 40], Gen.Int[0, 24], (x, y) => new PlacedMat(new(x / 2.0, y / 2.0), false, 0)).Array[1, 12]
        select (place, mats);

    [Fact]
    public void Of_AnyMats_NoOtherWayHasMoreInFront() => Any.Sample(s =>
    {
        var back = TeacherBack.Of(s.Place, s.Mats);
        int Behind(double facing) => s.Mats.Where(m => Math.Abs(m.Centre.XM - s.Place.XM) + Math.Abs(m.Centre.YM - s.Place.YM) > 0.01).Count(m => Math.Cos(facing) * (m.Centre.XM - s.Place.XM) + Math.Sin(facing) * (m.Centre.YM - s.Place.YM) < -1e-7);
        // Those in front are so by the way faced, and none of 3600 other ways leaves fewer behind.
        Assert.Equal(Behind(back.FacingRad), back.BehindMats.Count);
        Assert.True(Enumerable.Range(0, 3600).Min(i => Behind(i * Math.PI / 1800)) >= back.BehindMats.Count);
    });

    [Fact]
    public void Of_ByTheWall_HasNobodyBehindAndFacesTheMiddle()
    {
        // By hand: mats at the left and at the right end of the front wall and one ahead.
        var back = TeacherBack.Of(new(5, 0), [new(new(1, 0), false, 0), new(new(9, 0), false, 0), new(new(5, 4), false, 0)]);
        Assert.Empty(back.BehindMats);
        Assert.Equal(Math.PI / 2, back.FacingRad, 1e-9);
    }

    [Fact]
    public void Of_NoMat_FacesTheBackWall() => Assert.Equal(Math.PI / 2, TeacherBack.Of(new(1, 1), []).FacingRad);
}
