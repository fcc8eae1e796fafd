using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Records.Tests.Postures;

public sealed class BalanceWordsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB"), Spanish = CultureInfo.GetCultureInfo("es-ES");
    private static readonly Posture TwoFeet = new("two-feet", PostureGroup.Upright, Pose.Upright, [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);

    [Fact]
    public void Verdict_StandingUpright_TipsOverTheHeelsFirst()
    {
        // By hand: the centre of an upright body is just in front of the ankles, a quarter of the foot (.038 H) from the heel,
        // and farther from the toes and from the outer edges of two feet.
        var settled = TwoFeet.Settle();
        var balance = PostureBalance.Of(settled);
        Assert.Equal("Held, with room to spare. It would first tip over the heels.", BalanceWords.Verdict(settled, balance, English));
        Assert.Equal("Se mantiene, con margen. Primero se volcaría sobre los talones.", BalanceWords.Verdict(settled, balance, Spanish));
    }

    [Fact]
    public void Verdict_LeaningFarBack_SaysByHowMuchAndBeyondWhat()
    {
        var settled = (TwoFeet with { Pose = Pose.Upright.Placed(-.6, 0, 0).With(Joint.HipFlexion, Side.Middle, -.6) }).Settle();
        var balance = PostureBalance.Of(settled);
        Assert.False(balance.IsHeld);
        var outside = Math.Round(-100 * balance.Whole.Margin.MarginH);
        Assert.Equal(
            $"Cannot be held still: the line of gravity falls {outside} hundredths of a stature outside the base, beyond the heels.",
            BalanceWords.Verdict(settled, balance, English));
        Assert.Contains($"{Math.Round(-150 * balance.Whole.Margin.MarginH)} cm", BalanceWords.Verdict(settled, balance, English, 150));
    }

    [Fact]
    public void Weakest_OnOneFoot_IsASideOfThatFoot()
    {
        // By hand: the centre stays between the hips, .048 H to the right of the left foot's middle and so .020 H beyond its inner edge.
        var settled = (TwoFeet with { Contacts = [new(ContactPart.Foot, Side.Left)] }).Settle();
        Assert.Equal("the left foot, to the right", BalanceWords.Weakest(settled, PostureBalance.Of(settled), English));
    }

    [Theory]
    [InlineData(.004, null, "less than 1 hundredth of a stature")]
    [InlineData(.011, null, "1 hundredth of a stature")]
    [InlineData(.03, null, "3 hundredths of a stature")]
    [InlineData(.03, 140.0, "4 cm")]
    public void Length_InEitherUnit_IsRoundedToWholes(double lengthH, double? statureCm, string said) =>
        Assert.Equal(said, BalanceWords.Length(lengthH, English, statureCm));

    [Fact]
    public void Contact_EveryPartAndSide_HasANameInBothLanguages()
    {
        foreach (var part in Enum.GetValues<ContactPart>())
            foreach (var side in SegmentFigures.IsPaired(ContactPatch.Of(part).Segment) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                foreach (var culture in new[] { English, Spanish })
                {
                    Assert.DoesNotContain('|', BalanceWords.Contact(new(part, side), culture));
                    foreach (var end in Enum.GetValues<PrintEnd>())
                        Assert.DoesNotContain('|', BalanceWords.Side(new(new(part, side), new(part, side), end, BodyDirection.Front, false), culture));
                }
    }

    [Fact]
    public void Side_OfBothHandsUpsideDown_IsTheFingertipsWithoutLeftOrRight()
    {
        var (left, right) = (new Contact(ContactPart.Hand, Side.Left), new Contact(ContactPart.Hand, Side.Right));
        Assert.Equal("the fingertips", BalanceWords.Side(new(left, right, PrintEnd.Front, BodyDirection.Back, true), English));
        Assert.Equal("the hands, on the belly side", BalanceWords.Side(new(left, right, PrintEnd.Side, BodyDirection.Front, true), English));
        Assert.Equal("the line between the left hand and the crown", BalanceWords.Side(new(left, new(ContactPart.Crown, Side.Middle), PrintEnd.Side, BodyDirection.Left, true), English));
    }

    [Fact]
    public void Share_FourContacts_SaysTheBounds() => Assert.Equal(
        "left foot: 31% of the weight, by statics alone anything from 0% to 60%",
        BalanceWords.Share(BalanceWords.Contact(new(ContactPart.Foot, Side.Left), English), new LoadShare(.31, 0, .6), English));

    [Fact]
    public void Sides_OfAStandingBody_AreFourAndTheWeakestIsFirst()
    {
        // By hand: to the toes, to the heels and to the outer edge of either foot; the cut corners of the prints are no sides of their own.
        var settled = TwoFeet.Settle();
        var balance = PostureBalance.Of(settled);
        var sides = BalanceWords.Sides(settled, balance, English);
        Assert.Equal(["the heels", "the left foot, to the left", "the right foot, to the right", "the toes"], sides.Select(s => s.Name).Order());
        Assert.Equal(balance.Whole.Margin.MarginH, sides[0].Edge.MarginH);
        Assert.True(sides[0].IsWeakest);
    }

    [Theory]
    [InlineData(.20, "The three points make a broad triangle.")]
    [InlineData(.06, "The three points make a flat triangle.")]
    [InlineData(.03, "The triangle has turned into a line: only the size of the prints is left.")]
    public void Shape_OfThreePoints_IsTheTriangleOfTheirMiddles(double forwardH, string said)
    {
        // By hand: hands .24 H apart and the crown in front of their middle, so the height over the longest side is .83 (of the equal sides), .25 and .125.
        SettledContact At(ContactPart part, Side side, double xH, double yH) => new(new(part, side), new(xH, yH), [new(xH, yH)], 0);
        var settled = new SettledPosture(TwoFeet, new SettledBody(Skeleton.Of(Pose.Upright), [
            At(ContactPart.Hand, Side.Left, 0, .12), At(ContactPart.Hand, Side.Right, 0, -.12), At(ContactPart.Crown, Side.Middle, forwardH, 0)], 0, 0), null, 0);
        Assert.Equal(said, BalanceWords.Shape(settled, PostureBalance.Of(TwoFeet.Settle()), English));
    }
}
