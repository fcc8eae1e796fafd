using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class GroupReadingTests
{
    private static readonly MarkTraits Clear = new("", 0, 0, .02, .5, 1, 0, .05, 0, .12, 1, .02, .9, .85, 6, 1);

    [Fact]
    public void Of_AMarkBesideADoubtfulOne_BothDoubtful() =>
        Assert.Equal([MarkVerdict.Doubtful, MarkVerdict.Doubtful], Read((MarkVerdict.Marked, .999, Clear), (MarkVerdict.Doubtful, .6, Clear)));

    [Fact]
    public void Of_AMarkBesideAFaintDoubt_StaysAMark() =>
        Assert.Equal([MarkVerdict.Marked, MarkVerdict.Doubtful], Read((MarkVerdict.Marked, .999, Clear), (MarkVerdict.Doubtful, .1, Clear)));

    [Fact]
    public void Of_TwoMarks_AreNotDecidedHere() =>
        Assert.Equal([MarkVerdict.Marked, MarkVerdict.Marked], Read((MarkVerdict.Marked, .999, Clear), (MarkVerdict.Marked, .999, Clear)));

    [Fact]
    public void Of_InkAroundAFieldBesideAMark_IsTheMarks() => Assert.Equal(
        [MarkVerdict.Marked, MarkVerdict.Empty], Read((MarkVerdict.Marked, .999, Clear), (MarkVerdict.Doubtful, .001, Clear with { AroundFraction = .5 })));

    [Theory]
    [InlineData(.9, 0)] // a ring
    [InlineData(.5, .1)] // ink inside
    public void Of_MoreThanInkAroundBesideAMark_StaysDoubtful(double around, double ink) => Assert.Equal(
        [MarkVerdict.Marked, MarkVerdict.Doubtful],
        Read((MarkVerdict.Marked, .999, Clear), (MarkVerdict.Doubtful, .001, Clear with { AroundFraction = around, InkFraction = ink })));

    [Fact]
    public void Of_InkAroundAFieldOfAnEmptyGroup_StaysDoubtful() => Assert.Equal(
        [MarkVerdict.Empty, MarkVerdict.Doubtful], Read((MarkVerdict.Empty, .001, Clear), (MarkVerdict.Doubtful, .001, Clear with { AroundFraction = .5 })));

    private static MarkVerdict[] Read(params (MarkVerdict Verdict, double Fraction, MarkTraits Traits)[] fields)
    {
        MarkField[] group = [.. fields.Select((_, i) => new MarkField($"{i}", "Level-1-1", 10 * i, 0, 5, 5, true))];
        var layout = new SheetLayout(210, 297, [], new(0, 0, 20), group, []);
        return [.. GroupReading.Of(layout, [.. fields.Select(f => f.Traits)], [.. fields.Select((f, i) => new FieldReading($"{i}", f.Verdict, f.Fraction))]).Select(r => r.Verdict)];
    }
}
