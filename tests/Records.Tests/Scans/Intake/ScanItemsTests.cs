using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Sheets;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Scans.Intake;

public sealed class ScanItemsTests
{
    private static ScanItem ItemOf(string key, params string[] marks) =>
        ScanItems.Of(PaperSheet.Layout, PaperSheet.Readings(PaperSheet.Layout, marks), Towers).Single(i => i.Key == key);

    [Theory]
    [InlineData("Level-1-1-0", "Level-1-1-3", 3)]
    [InlineData("Predicted-1-2-0", "Predicted-1-2-0", 0)]
    [InlineData("Predicted-1-2-0", "Predicted-1-2-5", 5)]
    [InlineData("Held-2-3-4", "Held-2-3-4", 1)]
    [InlineData("Held-2-3-4", "NotYet-2-3-4", 0)]
    [InlineData("Cue-1-1-2", "Cue-1-1-2", 1)]
    [InlineData("Next-1-1-0", "Next-1-1-2", 2)]
    public void Of_OneMark_IsItsValue(string key, string mark, int value)
    {
        var item = ItemOf(key, mark);
        Assert.Equal((value, ScanDoubt.None), (item.Value, item.Doubt));
        Assert.Equal(value, item.Settled);
        Assert.False(item.IsWaiting);
    }

    [Fact]
    public void Of_NothingMarked_SaysNothingAndAsksNothing()
    {
        var items = ScanItems.Of(PaperSheet.Layout, PaperSheet.Readings(PaperSheet.Layout), Towers);
        // By hand, a set: a level, a prediction, five trials, next, and three cues of the first task or two of the second.
        Assert.Equal(3 * (8 + 3) + 3 * (8 + 2), items.Count);
        Assert.All(items, i => Assert.True(i is { Value: null, Doubt: ScanDoubt.None, IsWaiting: false }));
    }

    [Theory]
    [InlineData(ScanDoubt.SeveralMarked, "Level-1-1-1", "Level-1-1-3")]
    [InlineData(ScanDoubt.Unclear, "Level-1-1-1", "?Level-1-1-3")]
    [InlineData(ScanDoubt.Unclear, "?Level-1-1-1", "?Level-1-1-3")]
    [InlineData(ScanDoubt.Faint, "?Level-1-1-1")]
    [InlineData(ScanDoubt.ChoiceMissing, "Held-1-1-1")]
    [InlineData(ScanDoubt.ChoiceMissing, "?NotYet-1-1-5")]
    [InlineData(ScanDoubt.None, "Held-1-2-1")]
    [InlineData(ScanDoubt.None, "Held-2-1-1")]
    public void Of_LevelOfSetOne_DoubtsWithAReason(ScanDoubt doubt, params string[] marks)
    {
        var item = ItemOf("Level-1-1-0", marks);
        Assert.Equal((doubt, (decimal?)null), (item.Doubt, item.Value));
        Assert.Equal(doubt != ScanDoubt.None, item.IsWaiting);
    }

    [Fact]
    public void Of_HeldAndNotYet_IsBoth() => Assert.Equal(ScanDoubt.SeveralMarked, ItemOf("Held-1-1-2", "Held-1-1-2", "NotYet-1-1-2").Doubt);

    [Theory]
    [InlineData("Held-1-1-5", "Held-1-1-5", 4, 3)]
    [InlineData("Predicted-1-1-0", "Predicted-1-1-5", 4, 3)]
    [InlineData("Held-1-3-1", "Held-1-3-1", 5, 2)]
    public void Of_MarkBeyondTheSheet_IsDoubted(string key, string mark, int trialCount, int setCount)
    {
        var smaller = Towers with { TrialCount = trialCount, SetCount = setCount };
        var item = ScanItems.Of(PaperSheet.Layout, PaperSheet.Readings(PaperSheet.Layout, mark), smaller).Single(i => i.Key == key);
        Assert.Equal(ScanDoubt.NotOnSheet, item.Doubt);
    }

    [Fact]
    public void Of_PredictedSeconds_MayBeMoreThanTrials()
    {
        var layout = PaperSheet.Layout with { Fields = [new("Predicted-1-1-20", "", 0, 0, 5, 5, true)] };
        var holds = Towers with { Predicts = PredictionKind.HoldS };
        Assert.Equal(20, ScanItems.Of(layout, PaperSheet.Readings(layout, "Predicted-1-1-20"), holds).Single().Value);
    }

    [Fact]
    public void Choices_OfEachKind_AreWhatTheFormOffers()
    {
        Assert.Equal([1, 2, 3, 4], ItemOf("Level-1-1-0").Choices);
        Assert.Equal([0, 1, 2, 3, 4, 5], ItemOf("Predicted-1-1-0").Choices);
        Assert.Equal([1, 0], ItemOf("Held-1-1-1").Choices);
        Assert.Equal([1, 0], ItemOf("Cue-1-1-1").Choices);
        Assert.Equal([1, 2, 3], ItemOf("Next-1-1-0").Choices);
    }

    [Fact]
    public void CertainFraction_OfAnItem_IsItsLeastSureField()
    {
        Assert.Equal(0.9999, ItemOf("Level-1-1-0", "Level-1-1-2").CertainFraction, 9);
        Assert.Equal(0.5, ItemOf("Level-1-1-0", "Level-1-1-2", "?Level-1-1-3").CertainFraction, 9);
    }
}
