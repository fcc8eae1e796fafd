using CsCheck;
using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Halls.Drawing;

namespace Slantwise.Records.Tests.Halls.Drawing;

public sealed class SightShadowTests
{
    private static readonly Gen<(FloorPoint Place, FloorRectangle Thing, FloorPoint Seen)> Any =
        from place in Gen.Select(Gen.Double[0.1, 19.9], Gen.Double[0.1, 11.9], (x, y) => new FloorPoint(x, y))
        from thing in Gen.Select(Gen.Double[0, 16], Gen.Double[0, 9], Gen.Double[0.2, 4], Gen.Double[0.2, 3], (x, y, w, d) => new FloorRectangle(x, y, w, d))
        from seen in Gen.Select(Gen.Double[0.1, 19.9], Gen.Double[0.1, 11.9], (x, y) => new FloorPoint(x, y))
        select (place, thing, seen);

    [Fact]
    public void Of_AnyPlace_HidesWhatTheEngineSaysIsHidden() => Any.Sample(s =>
    {
        var shadow = SightShadow.Of(s.Place, s.Thing, 20, 12);
        var inThing = s.Place.XM >= s.Thing.LeftXM && s.Place.XM <= s.Thing.RightXM && s.Place.YM >= s.Thing.FrontYM && s.Place.YM <= s.Thing.BackYM;
        if (inThing)
        {
            Assert.Empty(shadow);
            return;
        }
        var hidden = TeacherSight.Of(new(20, 12, [new(s.Thing, true)]), [new(s.Seen, false, 0)], s.Place).HiddenMats.Count > 0;
        var (inside, nearM) = Inside(shadow, s.Seen);
        // A hair's breadth from the edge either answer is right.
        if (nearM > 1e-4) Assert.Equal(hidden, inside);
    });

    [Fact]
    public void Of_ASquareAhead_IsTheTrapezoidByHand()
    {
        // By hand: from (0, 5), a thing from x = 5 to 6 and y = 4 to 6: lines of sight touch (5, 4) and (5, 6) and reach y = 1 and 9 at x = 20.
        var shadow = SightShadow.Of(new(0, 5), new(5, 4, 1, 2), 20, 12);
        Assert.Equal([(5, 4), (5, 6), (20, 1), (20, 9)], shadow.Select(p => (Math.Round(p.XM, 6), Math.Round(p.YM, 6))).Order());
    }

    private static (bool IsInside, double EdgeM) Inside(IReadOnlyList<FloorPoint> piece, FloorPoint p)
    {
        var (isInside, edge) = (piece.Count >= 3, double.MaxValue);
        for (var i = 0; i < piece.Count; i++)
        {
            var (a, b) = (piece[i], piece[(i + 1) % piece.Count]);
            var length = Math.Sqrt(Math.Pow(b.XM - a.XM, 2) + Math.Pow(b.YM - a.YM, 2));
            if (length < 1e-12) continue;
            var side = ((b.XM - a.XM) * (p.YM - a.YM) - (b.YM - a.YM) * (p.XM - a.XM)) / length;
            isInside &= side >= 0;
            edge = Math.Min(edge, Math.Abs(side));
        }
        return (isInside, edge);
    }
}
