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
}
