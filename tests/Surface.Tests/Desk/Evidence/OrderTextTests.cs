using Slantwise.Desk.Pages.Evidence;
using Slantwise.Engines.Statistics.Orders;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Records.Evidence.Orders;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class OrderTextTests
{
    private static OrderedPair Pair(int compared, int asOrdered, int against, int managedHarder, double? harderLogits = null, double share = .8) => new(
        3, 4, new LevelPair(2, 3, compared, asOrdered, against), managedHarder,
        harderLogits is { } mean ? new Estimate(mean, .3, share, 0) : null, []);

    [Fact]
    public void Both_PupilsWhoManagedTheSecond_SaysHowManyManagedTheFirst()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal("11 of 12 pupils", OrderText.Both(Pair(14, 1, 1, 12)));
        // Wilson at 90 % for 11 of 12: 0.694 to 0.982, by hand from [Wilson1927]; in tenths, outwards.
        Assert.Equal("likely 6 to 10 in 10", OrderText.BothRange(Pair(14, 1, 1, 12)));
        Assert.Equal("too few pupils for a range", OrderText.BothRange(Pair(14, 1, 1, 4)));
        Assert.Equal("nobody managed 4 yet", OrderText.Both(Pair(14, 1, 0, 0)));
    }

    [Fact]
    public void Question_CountsThatLeanTheOtherWay_SayThatItCouldBeChance()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal(
            "Level 4 looks no harder than level 3. Of 14 pupils who tried both, 5 managed only level 4 and 2 only level 3. It could be chance. For whom is it harder, and for whom easier?",
            OrderText.Question(Pair(14, 2, 5, 9)));
    }

    [Fact]
    public void Question_TheModelIsSure_LeavesChanceOutAndNeverSaysWhichOrderIsRight()
    {
        using var english = new Spoken("en-GB");
        var question = OrderText.Question(Pair(14, 2, 9, 12, harderLogits: -1.2))!;
        Assert.DoesNotContain("chance", question);
        Assert.EndsWith("?", question);
        Assert.DoesNotMatch("wrong|right|should|correct", question);
    }

    [Fact]
    public void Question_AsTheSheetSaysOrUnknown_IsNone()
    {
        Assert.Null(OrderText.Question(Pair(14, 9, 1, 4, harderLogits: 1.2)));
        Assert.Null(OrderText.Question(Pair(0, 0, 0, 0)));
        // Mostly assumed: the model's lean is the sheet's, or a few tries'.
        Assert.Null(OrderText.Question(Pair(2, 0, 1, 1, harderLogits: -1.2, share: .3)));
    }

    [Fact]
    public void Whole_NobodyTried_IsSaidAndHasNoFigures()
    {
        using var english = new Spoken("en-GB");
        var none = GuttmanOrder.Of([], 3);
        Assert.Equal("Nobody has 3 tries at one level yet.", OrderText.Whole(none));
        Assert.Equal("", OrderText.Figures(none));
        // Everybody managed everything: any order foretells that.
        Assert.Equal("Reproducibility 1.00, scalability not defined, as each level was managed by all or by none.", OrderText.Figures(GuttmanOrder.Of([[true, true], [true, true]], 2)));
    }
}
