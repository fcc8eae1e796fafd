using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

/// <summary>The stated errors beside what really happens when everything is marked again and again.</summary>
public sealed class MarkedErrorTests
{
    private const int RoundCount = 4000;
    private const double ClickSdH = .01;

    [Theory]
    [InlineData("stork", LevelBasis.PictureAndFloor)]
    [InlineData("squat", LevelBasis.PictureAndFloor)]
    [InlineData("support", LevelBasis.PictureAndFloor)]
    [InlineData("support", LevelBasis.Floor)]
    [InlineData("handstand", LevelBasis.PictureAndFloor)]
    [InlineData("handstand", LevelBasis.Upright)]
    public void Of_MarkedAgainAndAgain_SpreadsAsStated(string name, LevelBasis level)
    {
        // Each round: a camera held aslant by chance, contacts at chance depths, every click off by chance; the truth stays.
        var truth = Picture(name, level);
        var stated = MarkedBalance.Of(truth, ClickSdH);
        var chance = new Random(20240611);
        var (left, right, share) = (new List<double>(), new List<double>(), new List<double>());
        for (var round = 0; round < RoundCount; round++)
        {
            // Only errors that the engine is told of: a floor that was said to be level has no depths, and something upright no tilt.
            var tiltRad = level == LevelBasis.PictureAndFloor ? Normal(chance) * MarkedTilt.HandHeldSdRad : 0;
            var marked = MarkedBalance.Of(Clicked(truth, tiltRad, level == LevelBasis.PictureAndFloor ? MarkedTilt.DepthSdH : 0, chance), ClickSdH);
            left.Add(marked.Left.MarginH);
            right.Add(marked.Right.MarginH);
            if (marked.Shares.Count == 2) share.Add(marked.Shares[0].ShareFraction);
        }
        // 4000 rounds know a standard deviation to about 1.1 %; what is not linear and the scale add a little.
        Assert.Equal(stated.Left.MarginSdH, Sd(left), .05 * stated.Left.MarginSdH);
        Assert.Equal(stated.Right.MarginSdH, Sd(right), .05 * stated.Right.MarginSdH);
        // Clicks beside a limb make it a little longer, never shorter, and so the unit: 2·.01²/(2·.21²) = .2 % for a limb, at most twice that.
        Assert.Equal(stated.Left.MarginH, left.Average(), .05 * stated.Left.MarginSdH + .004 * stated.Left.MarginH);
        if (share.Count == RoundCount) Assert.Equal(stated.Shares[0].ShareSdFraction, Sd(share), .05 * stated.Shares[0].ShareSdFraction);
    }

    [Fact]
    public void Of_MarginOfOneError_ChanceAsOften()
    {
        // A handstand pushed so far that the margin is about one error: how often marking it again still says "inside" is the chance.
        var picture = Picture("handstand", LevelBasis.Upright);
        var (margin, sd) = (MarkedBalance.Of(picture, ClickSdH).Weakest, MarkedBalance.Of(picture, ClickSdH).Weakest.MarginSdH);
        var isLeft = margin == MarkedBalance.Of(picture, ClickSdH).Left;
        var pushPx = (margin.MarginH - sd) * Drawn.PxPerH * (isLeft ? -1 : 1);
        picture = picture with { Points = [.. picture.Points.Select(p => p with { At = p.At + new PointPx(pushPx, 0) })] };
        var stated = MarkedBalance.Of(picture, ClickSdH);
        // One standard deviation from the nearer end, far from the other: Φ(1) = .841.
        Assert.Equal(.841, stated.HeldChanceFraction, .005);
        Assert.Equal(MarkedVerdict.TooClose, stated.Verdict);
        var chance = new Random(7);
        var inside = Enumerable.Range(0, RoundCount).Count(_ => MarkedBalance.Of(Clicked(picture, 0, 0, chance), ClickSdH).MarginH >= 0);
        Assert.Equal(stated.HeldChanceFraction, inside / (double)RoundCount, .025);
    }

    [Fact]
    public void Of_ClicksTwiceAsFarOff_ClickingPartTwiceAsLarge()
    {
        var picture = Picture("squat", LevelBasis.Upright);
        Assert.Equal(2, MarkedBalance.Of(picture, .02).Left.MarginSdH / MarkedBalance.Of(picture, .01).Left.MarginSdH, 1e-9);
    }

    [Fact]
    public void Of_EverythingMarkedFourTimes_HalfTheError()
    {
        var once = Picture("squat", LevelBasis.Upright);
        var often = once with { Points = [.. once.Points, .. once.Points, .. once.Points, .. once.Points], Contacts = [new(ContactPart.Foot, Side.Middle, [ContactEnd.Of(Landmark.Heel), ContactEnd.Of(Landmark.Toe)])] };
        once = once with { Contacts = often.Contacts };
        // The upright was marked once in both: so without it, at a height of 0 for the tilt.
        double Clicking(MarkedPicture picture)
        {
            var marked = MarkedBalance.Of(picture, ClickSdH);
            var tiltH = marked.HeightH * marked.Tilt.TiltSdRad;
            return Math.Sqrt(marked.Left.MarginSdH * marked.Left.MarginSdH - tiltH * tiltH);
        }
        Assert.Equal(2, Clicking(once) / Clicking(often), 1e-6);
    }

    [Fact]
    public void ClickSpread_OfRepeatedMarks_IsThePooledDeviation()
    {
        // By hand: (0,0) and (2,0) about (1,0): 2; (5,5), (5,8), (5,5) about (5,6): 1 + 4 + 1 = 6; 8 over 2·(1+2) degrees.
        MarkedPoint[] marks =
        [
            new(Landmark.Hip, Side.Left, new(0, 0)), new(Landmark.Hip, Side.Left, new(2, 0)), new(Landmark.Hip, Side.Right, new(9, 9)),
            new(Landmark.Knee, Side.Left, new(5, 5)), new(Landmark.Knee, Side.Left, new(5, 8)), new(Landmark.Knee, Side.Left, new(5, 5)),
        ];
        var spread = ClickSpread.Of(marks)!;
        Assert.Equal(Math.Sqrt(8.0 / 6), spread.ClickSdPx, 1e-12);
        Assert.Equal(6, spread.DegreeCount);
        Assert.Null(ClickSpread.Of(marks[2..4]));
    }

    private static MarkedPicture Picture(string name, LevelBasis level) => MarkedBalanceTests.Both(Drawn.Picture(Held.Of(name), Drawn.FromSide)) with
    {
        Level = level,
        Upright = level == LevelBasis.Upright ? (new(200, 400), new(200, 900)) : null,
    };

    private static MarkedPicture Clicked(MarkedPicture truth, double tiltRad, double depthSdH, Random chance)
    {
        var (sine, cosine) = Math.SinCos(tiltRad);
        PointPx Seen(PointPx p, double depthPx) => Off(new(cosine * p.XPx - sine * (p.YPx + depthPx), sine * p.XPx + cosine * (p.YPx + depthPx)), chance);
        return truth with
        {
            Points = [.. truth.Points.Select(p => p with { At = Seen(p.At, 0) })],
            Contacts = [.. truth.Contacts.Select(c => At(c, Normal(chance) * depthSdH * Drawn.PxPerH))],
            Upright = truth.Upright is { } u ? (Seen(u.Top, 0), Seen(u.Bottom, 0)) : null,
        };
        MarkedContact At(MarkedContact contact, double depthPx) => contact with { Ends = [.. contact.Ends.Select(e => e with { At = Seen(e.At, depthPx) })] };
    }

    private static PointPx Off(PointPx at, Random chance) =>
        at + ClickSdH * Drawn.PxPerH * new PointPx(Normal(chance), Normal(chance));

    private static double Normal(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    private static double Sd(List<double> values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1));
    }
}
