using CsCheck;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

public sealed class MarkedBalanceTests
{
    private static readonly Gen<string> AnyHeld = Of("standing", "stork", "squat", "support", "handstand", "tuck headstand");

    [Theory]
    // A drawn body's own trunk is cut otherwise (parts from the top of the breastbone): up to .004 of a stature along the trunk.
    [InlineData("standing", true)]
    [InlineData("stork", true)]
    [InlineData("squat", true)]
    [InlineData("support", true)]
    [InlineData("handstand", true)]
    [InlineData("tuck headstand", true)]
    [InlineData("standing", false)]
    [InlineData("handstand", false)]
    public void Of_OwnBodyFromTheSide_GivesItsCentreBack(string name, bool hasWaist)
    {
        var body = Held.Of(name);
        var whole = BodyBalance.Of(body);
        var marked = MarkedBalance.Of(Drawn.Picture(body, Drawn.FromSide, hasWaist));
        var there = Drawn.FromSide(whole.Centre);
        Assert.True((marked.CentrePx - there).LengthPx / Drawn.PxPerH < .005, $"{(marked.CentrePx - there).LengthPx / Drawn.PxPerH}");
        Assert.Equal(Drawn.PxPerH, marked.Scale.PxPerH, 8);
        Assert.Equal(whole.Centre.ZH, marked.HeightH, .02);
        // The base in this view is how far the corners reach to the front and to the back.
        var (backH, frontH) = (whole.Base.Corners.Min(c => c.XH), whole.Base.Corners.Max(c => c.XH));
        Assert.Equal(whole.Centre.XH - backH, marked.Left.MarginH, .012);
        Assert.Equal(frontH - whole.Centre.XH, marked.Right.MarginH, .012);
    }

    [Theory]
    // Textbooks give 57 % of stature for men and 55 % for women (undergraduate biomechanics notes); within 1. Standing with the mean
    // lengths of [DeLeva1996] table 4, in mm, the ankle .039 of a stature high: 1741 mm for men, 1735 mm for women.
    [InlineData(BodyTable.Male, .57, 67.9, 440.3, 422.2, 515.5, 92.0, 203.3, 281.7, 268.9, 187.9, 258.1)]
    [InlineData(BodyTable.Female, .55, 67.7, 438.6, 368.5, 497.9, 162.0, 200.2, 275.1, 264.3, 170.1, 228.3)]
    public void Of_StandingAtMeanLengths_CentreAtTheTextbookHeight(
        BodyTable table, double textbookH, double ankleMm, double shankMm, double thighMm, double trunkMm, double neckMm, double headMm,
        double upperArmMm, double forearmMm, double handMm, double footMm)
    {
        var (kneeMm, hipMm) = (ankleMm + shankMm, ankleMm + shankMm + thighMm);
        var (shoulderMm, jawMm) = (hipMm + trunkMm, hipMm + trunkMm + neckMm);
        var elbowMm = shoulderMm - upperArmMm;
        MarkedPoint Up(Landmark landmark, double upMm, double frontMm = 0) => new(landmark, Side.Middle, new(frontMm, -upMm));
        MarkedPoint[] marks =
        [
            Up(Landmark.Ankle, ankleMm), Up(Landmark.Knee, kneeMm), Up(Landmark.Hip, hipMm), Up(Landmark.Shoulder, shoulderMm),
            Up(Landmark.Jaw, jawMm), Up(Landmark.Crown, jawMm + headMm), Up(Landmark.Elbow, elbowMm), Up(Landmark.Wrist, elbowMm - forearmMm),
            Up(Landmark.Fingertip, elbowMm - forearmMm - handMm), Up(Landmark.Heel, 0, -.25 * footMm), Up(Landmark.Toe, 0, .75 * footMm),
        ];
        var marked = MarkedBalance.Of(
            new(marks, [new(ContactPart.Foot, Side.Middle, [ContactEnd.Of(Landmark.Heel), ContactEnd.Of(Landmark.Toe)])]), table: table);
        Assert.Equal(textbookH, (0 - marked.CentrePx.YPx) / (jawMm + headMm), .01);
        Assert.Equal(marked.HeightH * marked.Scale.PxPerH, -marked.CentrePx.YPx, 1e-9);
    }

    [Fact]
    public void Of_PictureTurnedByQuarters_SameAnswer() => Gen.Select(AnyHeld, Gen.Int[0, 3]).Sample((name, quarters) =>
    {
        var upright = Drawn.Picture(Held.Of(name), Drawn.FromSide);
        // The camera was turned: the picture has to be turned clockwise by so many quarters to be the right way up.
        var turned = upright.Mapped(p => quarters switch
        {
            0 => p,
            1 => new(p.YPx, 1000 - p.XPx),
            2 => new(1000 - p.XPx, 1000 - p.YPx),
            _ => new(1000 - p.YPx, p.XPx),
        }) with { QuarterTurnCount = quarters };
        Same(MarkedBalance.Of(upright), MarkedBalance.Of(turned), 1e-9);
    });

    [Fact]
    public void Of_PictureTurnedByAnyAngle_SameAnswerFromSomethingUpright() => Gen.Select(AnyHeld, Gen.Double[-3.1, 3.1]).Sample((name, angleRad) =>
    {
        var straight = Drawn.Picture(Held.Of(name), Drawn.FromSide) with { Level = LevelBasis.Upright, Upright = (new(300, 200), new(300, 800)) };
        Same(MarkedBalance.Of(straight), MarkedBalance.Of(straight.Mapped(p => Turned(p, angleRad))), 1e-9);
    });

    [Fact]
    public void Of_PictureHeldAslant_SameAnswerFromTheFloor() => Gen.Select(Of("support", "tuck headstand"), Gen.Double[-.7, .7]).Sample((name, angleRad) =>
    {
        var straight = Drawn.Picture(Held.Of(name), Drawn.FromSide) with { Level = LevelBasis.Floor };
        var (before, after) = (MarkedBalance.Of(straight), MarkedBalance.Of(straight.Mapped(p => Turned(p, angleRad))));
        Assert.Equal(angleRad, after.Tilt.TiltRad, 1e-9);
        Same(before, after, 1e-9);
    });

    [Fact]
    public void Of_LargerPicture_SameAnswer() => Gen.Select(AnyHeld, Gen.Double[.2, 8]).Sample((name, factor) =>
    {
        var picture = Drawn.Picture(Held.Of(name), Drawn.FromSide);
        Same(MarkedBalance.Of(picture), MarkedBalance.Of(picture.Mapped(p => factor * p + new PointPx(40, -7))), 1e-9);
    });

    [Fact]
    public void Of_PictureInAMirror_EndsChangePlaces() => AnyHeld.Sample(name =>
    {
        var picture = Drawn.Picture(Held.Of(name), Drawn.FromSide);
        var (here, there) = (MarkedBalance.Of(picture), MarkedBalance.Of(picture.Mapped(p => new(1400 - p.XPx, p.YPx))));
        Assert.Equal(here.Left.MarginH, there.Right.MarginH, 1e-9);
        Assert.Equal(here.Right.MarginSdH, there.Left.MarginSdH, 1e-9);
        Assert.Equal(here.HeldChanceFraction, there.HeldChanceFraction, 1e-9);
    });

    [Fact]
    public void Of_TwoContacts_LeverRule()
    {
        // By hand: hands and toes, the share of each is the other's distance from the line of gravity over the distance between both.
        var body = Held.Of("support");
        var picture = Both(Drawn.Picture(body, Drawn.FromSide));
        var marked = MarkedBalance.Of(picture);
        var handsH = body.Contacts.Where(c => c.Contact.Part == ContactPart.Hand).Average(c => c.Middle.XH);
        var toesH = body.Contacts.Where(c => c.Contact.Part == ContactPart.Toes).Average(c => c.Middle.XH);
        var hands = marked.Shares.Single(s => s.Part == ContactPart.Hand);
        Assert.Equal((BodyBalance.Of(body).Centre.XH - toesH) / (handsH - toesH), hands.ShareFraction, .012);
        Assert.Equal(1, marked.Shares.Sum(s => s.ShareFraction), 1e-12);
        Assert.All(marked.Shares, s => Assert.InRange(s.ShareFraction, s.LeastFraction, s.MostFraction));
        Assert.InRange(hands.ShareSdFraction, .002, .05);
    }

    [Fact]
    public void Of_ThreeContacts_BoundsOnly()
    {
        var marked = MarkedBalance.Of(Drawn.Picture(Held.Of("tuck headstand"), Drawn.FromSide));
        Assert.Equal(3, marked.Shares.Count);
        Assert.All(marked.Shares, s =>
        {
            Assert.True(double.IsNaN(s.ShareFraction));
            Assert.InRange(s.LeastFraction, 0, s.MostFraction);
        });
    }

    [Fact]
    public void Of_CentreBeyondTheToes_NotHeldAndNoShares()
    {
        // Leaning 30° forward about the ankles: sin 30° · about .53 H is far beyond the toes.
        var body = SettledBody.Of(Pose.Upright, [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);
        var leaning = Drawn.Points(body.Skeleton.Moved(Rotation.Bow(Math.PI / 6), new(0, 0, 0)), Drawn.FromSide);
        var marked = MarkedBalance.Of(new(leaning, Drawn.Picture(body, Drawn.FromSide).Contacts));
        Assert.Equal(MarkedVerdict.NotHeld, marked.Verdict);
        Assert.Same(marked.Right, marked.Weakest);
        Assert.True(marked.Weakest.TippingRad < 0);
        Assert.Empty(marked.Shares);
    }

    [Fact]
    public void Of_WrongWayUp_SaysSo()
    {
        var marked = MarkedBalance.Of(Drawn.Picture(Held.Of("standing"), Drawn.FromSide) with { QuarterTurnCount = 2 });
        Assert.Contains(MarkedCaution.BelowFloor, marked.Cautions);
    }

    [Fact]
    public void Of_LimbTowardsTheCamera_IsNamed()
    {
        // Arms straight out to the sides, seen from the side: both are nearly points.
        var body = SettledBody.Of(
            Pose.Upright.With(Joint.ShoulderAbduction, Side.Middle, 80 * Math.PI / 180), [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);
        var marked = MarkedBalance.Of(Drawn.Picture(body, Drawn.FromSide));
        Assert.Contains(MarkedCaution.Foreshortened, marked.Cautions);
        Assert.Equal(
            [Landmark.Shoulder, Landmark.Elbow], marked.Scale.Lengths.Where(l => l.IsForeshortened).Select(l => l.From).Distinct().Order());
        Assert.Equal(Drawn.PxPerH, marked.Scale.PxPerH, 1);
        Assert.Empty(MarkedBalance.Of(Drawn.Picture(body, Drawn.FromFront)).Cautions);
    }

    [Fact]
    public void Of_PointsLeftOut_AnswersWithALargerError()
    {
        var whole = Drawn.Picture(Held.Of("handstand"), Drawn.FromSide);
        var thinned = whole with { Points = [.. whole.Points.Where(p => p.Landmark is not (Landmark.Jaw or Landmark.Elbow or Landmark.Wrist or Landmark.Fingertip or Landmark.Toe))] };
        var (all, some) = (MarkedBalance.Of(whole), MarkedBalance.Of(thinned));
        Assert.DoesNotContain(MarkedCaution.Guessed, all.Cautions);
        Assert.Contains(MarkedCaution.Guessed, some.Cautions);
        Assert.True(some.Weakest.MarginSdH > all.Weakest.MarginSdH);
        Assert.Equal(all.MarginH, some.MarginH, 2 * some.Weakest.MarginSdH);
    }

    [Fact]
    public void Of_SomethingMissing_SaysWhat()
    {
        Assert.Equal(
            [MarkedNeed.Head, MarkedNeed.Shoulder, MarkedNeed.Hip, MarkedNeed.Leg, MarkedNeed.Contact], new MarkedPicture([], []).Needs());
        Assert.Contains("Contact", Assert.Throws<ArgumentException>(() => MarkedBalance.Of(
            Drawn.Picture(Held.Of("standing"), Drawn.FromSide) with { Contacts = [] })).Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => MarkedBalance.Of(Drawn.Picture(Held.Of("standing"), Drawn.FromSide), 0));
    }

    internal static MarkedPicture Both(MarkedPicture picture) => picture with
    {
        Points = [.. picture.Points.Where(p => p.Side != Side.Right).Select(p => p with { Side = Side.Middle })],
        Contacts = [.. picture.Contacts.Where(c => c.Side != Side.Right).Select(c => c with { Side = Side.Middle })],
    };

    private static Gen<string> Of(params string[] names) => Gen.Int[0, names.Length - 1].Select(i => names[i]);

    private static PointPx Turned(PointPx p, double angleRad)
    {
        var (sine, cosine) = Math.SinCos(angleRad);
        return new(cosine * p.XPx - sine * p.YPx, sine * p.XPx + cosine * p.YPx);
    }

    private static void Same(MarkedBalance a, MarkedBalance b, double within)
    {
        Assert.Equal(a.HeightH, b.HeightH, within);
        Assert.Equal(a.Left.MarginH, b.Left.MarginH, within);
        Assert.Equal(a.Right.MarginH, b.Right.MarginH, within);
        Assert.Equal(a.Left.MarginSdH, b.Left.MarginSdH, within);
        Assert.Equal(a.Right.TippingRad, b.Right.TippingRad, within);
        Assert.Equal(a.HeldChanceFraction, b.HeldChanceFraction, within);
        Assert.Equal(a.Shares.Select(s => s.MostFraction), b.Shares.Select(s => s.MostFraction), (x, y) => Math.Abs(x - y) < 1e-6);
    }
}
