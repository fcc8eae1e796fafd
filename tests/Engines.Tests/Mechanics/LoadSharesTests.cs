using CsCheck;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

public sealed class LoadSharesTests
{
    private static readonly Point2[] Rectangle = [new(.3, .2), new(.3, -.2), new(-.3, .2), new(-.3, -.2)];

    [Fact]
    public void Of_WorkshopTable_ThreeMomentEquations()
    {
        // Published exercise, re-solved: equilateral table of 900 mm, 500 N at 325 and 625 mm from two legs, which stands at
        // x = 875/3, y = 50√74/3 mm. Closed forms: Rc = 500√74/3^3.5, Rb = (4375·3^1.5 − 750√74)/3^4.5, Ra the rest of 500.
        Point2[] legs = [new(0, 0), new(900, 0), new(450, 450 * Math.Sqrt(3))];
        var shares = LoadShares.Of(legs, new Point2(875 / 3.0, 50 * Math.Sqrt(74) / 3)).Shares;
        Assert.Equal([291.9763, 116.0504, 91.9732], shares.Select(s => 500 * s.ShareFraction), (a, b) => Math.Abs(a - b) < 1e-4);
    }

    [Theory]
    // By hand, hands at (0, ±.18), head at (.28, 0), centre .10 in front of the hands: head .10/.28.
    [InlineData(.10, .321428571, .357142857)]
    [InlineData(.14, .25, .5)]
    public void Of_TwoHandsAndHead_HeadShareIsItsLeverage(double centreXH, double handFraction, double headFraction)
    {
        var loads = LoadShares.Of([new(0, .18), new(0, -.18), new(.28, 0)], new Point2(centreXH, 0));
        Assert.Equal(LoadBasis.Statics, loads.Basis);
        Assert.Equal(handFraction, loads.Shares[0].ShareFraction, 1e-9);
        Assert.Equal(handFraction, loads.Shares[1].ShareFraction, 1e-9);
        Assert.Equal(headFraction, loads.Shares[2].ShareFraction, 1e-9);
    }

    [Fact]
    public void Of_CentreBehindTheHands_NothingHolds() =>
        Assert.Equal(LoadBasis.NotHeld, LoadShares.Of([new(0, .18), new(0, -.18), new(.28, 0)], new Point2(-.02, 0)).Basis);

    [Fact]
    public void Of_FourOnARectangle_EqualStiffnessAndBounds()
    {
        // By hand: N = W/4 (1 ± x/a ± y/b) with a .3, b .2, x .06, y .05, W 400: 145, 95, 105, 55 in this order of corners;
        // by statics alone the first may be anywhere from 90 to 240.
        var loads = LoadShares.Of(Rectangle, new Point2(.06, .05));
        Assert.Equal(LoadBasis.EqualStiffness, loads.Basis);
        Assert.Equal([145, 95, 105, 55], loads.Shares.Select(s => 400 * s.ShareFraction), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(90, 400 * loads.Shares[0].LeastFraction, 1e-9);
        Assert.Equal(240, 400 * loads.Shares[0].MostFraction, 1e-9);
    }

    [Fact]
    public void Of_SquareLoadedAtItsCentre_AnythingUpToHalf()
    {
        var loads = LoadShares.Of([new(1, 1), new(1, -1), new(-1, 1), new(-1, -1)], new Point2(0, 0));
        Assert.All(loads.Shares, s =>
        {
            Assert.Equal(0, s.LeastFraction, 1e-12);
            Assert.Equal(.25, s.ShareFraction, 1e-12);
            Assert.Equal(.5, s.MostFraction, 1e-12);
        });
    }

    [Fact]
    public void Of_LoadNearACorner_TheLiftedContactCarriesNothing()
    {
        var loads = LoadShares.Of(Rectangle, new Point2(.28, .18));
        Assert.Equal(0, loads.Shares[3].ShareFraction);
        Assert.Equal(1, loads.Shares.Sum(s => s.ShareFraction), 1e-9);
    }

    [Theory]
    [InlineData(.5, true)]
    [InlineData(1.2, false)]
    public void Of_TwoContacts_HoldOnTheLineBetweenThem(double centreXH, bool isHeld) =>
        Assert.Equal(isHeld, LoadShares.Of([new(0, 0), new(1, 0)], new Point2(centreXH, 0)).Basis == LoadBasis.Statics);

    [Fact]
    public void Of_LoadAlmostInLineWithTwoContacts_StillSumsToOneAndCarriesTheCentre()
    {
        // Found by the law below: on the way two contacts alone carried, and an undamped step went astray.
        Point2[] contacts = [new(.624, .164), new(-.288, -.512), new(-.046, .994), new(.043, .075), new(-.619, -.129), new(-.881, .824)];
        var shares = LoadShares.Of(contacts, new Point2(.532, .142)).Shares;
        Assert.Equal(1, shares.Sum(s => s.ShareFraction), 1e-9);
        Assert.Equal(.532, shares.Zip(contacts, (s, p) => s.ShareFraction * p.XH).Sum(), 1e-9);
        Assert.Equal(.142, shares.Zip(contacts, (s, p) => s.ShareFraction * p.YH).Sum(), 1e-9);
    }

    [Fact]
    public void Of_RandomContacts_SumToOneInsideTheirBoundsAndCarryTheCentre() => Gen.Select(Floor.Point.Array[3, 7], Floor.CoordinateH, Floor.CoordinateH)
        .Sample((points, x, y) =>
        {
            var loads = LoadShares.Of(points, new Point2(x, y));
            var marginH = BalanceMargin.Of(new Point3(x, y, 1), BaseOfSupport.Of(points)).MarginH;
            // On the edge itself, rounding decides.
            if (Math.Abs(marginH) < 1e-5) return;
            Assert.Equal(marginH > 0, loads.Basis != LoadBasis.NotHeld);
            if (marginH < 0) return;
            Assert.Equal(1, loads.Shares.Sum(s => s.ShareFraction), 1e-9);
            Assert.Equal(x, loads.Shares.Zip(points, (s, p) => s.ShareFraction * p.XH).Sum(), 1e-9);
            Assert.Equal(y, loads.Shares.Zip(points, (s, p) => s.ShareFraction * p.YH).Sum(), 1e-9);
            Assert.All(loads.Shares, s => Assert.InRange(s.ShareFraction, s.LeastFraction - 1e-9, s.MostFraction + 1e-9));
        });

    [Fact]
    public void Of_ThreeContacts_HeldWhereTheCentreIsInsideTheirTriangle() => Gen.Select(Floor.Point.Array[3], Floor.CoordinateH, Floor.CoordinateH).Sample((points, x, y) =>
    {
        // A plain second version: areas of the three triangles that the centre makes with the sides, over the whole.
        double Twice(Point2 a, Point2 b, Point2 c) => (b.XH - a.XH) * (c.YH - a.YH) - (b.YH - a.YH) * (c.XH - a.XH);
        var centre = new Point2(x, y);
        var whole = Twice(points[0], points[1], points[2]);
        if (Math.Abs(whole) < 1e-3) return;
        double[] weights = [Twice(centre, points[1], points[2]) / whole, Twice(points[0], centre, points[2]) / whole, Twice(points[0], points[1], centre) / whole];
        if (weights.Any(w => Math.Abs(w) < 1e-6)) return;
        var loads = LoadShares.Of(points, centre);
        Assert.Equal(weights.All(w => w > 0), loads.Basis == LoadBasis.Statics);
        for (var i = 0; i < loads.Shares.Count; i++) Assert.Equal(weights[i], loads.Shares[i].ShareFraction, 1e-9);
    });

    [Fact]
    public void Of_EverythingTwiceAsLarge_SameShares() => Gen.Select(Floor.Point.Array[3, 7], Floor.CoordinateH, Floor.CoordinateH).Sample((points, x, y) =>
    {
        if (Math.Abs(BalanceMargin.Of(new Point3(x, y, 1), BaseOfSupport.Of(points)).MarginH) < 1e-5) return;
        var small = LoadShares.Of(points, new Point2(x, y));
        var large = LoadShares.Of(points.Select(p => 2 * p).ToArray(), new Point2(2 * x, 2 * y));
        Assert.Equal(small.Basis, large.Basis);
        for (var i = 0; i < small.Shares.Count; i++) Assert.Equal(small.Shares[i].ShareFraction, large.Shares[i].ShareFraction, 1e-7);
    });

    [Fact]
    public void OfPrints_TwoFeetUnderACentreBetweenTheirMiddles_ShareByTheLever()
    {
        // By hand: prints of 2 × 2 about (0, ±3), centre 1 to the left. Reactions at y₁ in 2..4 and y₂ in −4..−2 share by the lever,
        // the first carrying (1 − y₂)/(y₁ − y₂): 3/6 with (4, −2), 5/8 with (4, −4), 3/4 with (2, −2), 5/6 with (2, −4).
        Point2[] Print(double y) => [new(-1, y - 1), new(1, y - 1), new(1, y + 1), new(-1, y + 1)];
        var loads = LoadShares.OfPrints([Print(3), Print(-3)], new Point2(.5, 1));
        Assert.Equal(LoadBasis.EqualStiffness, loads.Basis);
        Assert.Equal(1, loads.Shares.Sum(s => s.ShareFraction), 1e-9);
        Assert.Equal(3.0 / 6, loads.Shares[0].LeastFraction, 1e-9);
        Assert.Equal(5.0 / 6, loads.Shares[0].MostFraction, 1e-9);
    }

    [Fact]
    public void Of_NoContact_SaysWhatIsNeeded() => Assert.Throws<ArgumentException>(() => LoadShares.Of([], new Point2(0, 0)));
}
