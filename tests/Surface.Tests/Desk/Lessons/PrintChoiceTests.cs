using Slantwise.Desk.Pages.Lessons;

namespace Slantwise.Surface.Tests.Desk.Lessons;

public class PrintChoiceTests
{
    private static readonly Guid Lesson = new(7, 0, 0, new byte[8]);

    [Fact]
    public void Of_UnknownDocument_IsTheSheets() => Assert.Equal("sheets", PrintChoice.Of("?kind=novel&wish=1").Kind);

    [Fact]
    public void PrintOf_OptionOfAnotherDocument_IsLeftOutAndKeptForIt()
    {
        var choice = PrintChoice.Of("?kind=stations&size=letter&cards=full&two-sided=1");
        Assert.Equal($"/print/lessons/{Lesson}/stations.pdf?size=letter&cards=full", choice.PrintOf(Lesson, ".pdf"));
        Assert.Equal("two-sided", Assert.Single(choice.Kept).Key);
        Assert.Equal($"/lessons/{Lesson}/print?kind=sheets&size=letter&cards=full&two-sided=1", choice.PageOf(Lesson, "sheets"));
    }

    [Fact]
    public void PageOf_StrangeValue_IsEscaped() =>
        Assert.EndsWith("?kind=class&size=%22%26x", PrintChoice.Of("?kind=class&size=%22%26x").PageOf(Lesson, "class"), StringComparison.Ordinal);

    [Fact]
    public void IsOn_NoValue_IsOff()
    {
        Assert.False(PrintChoice.Of("?kind=sheets").IsOn("signs"));
        Assert.True(PrintChoice.Of("?kind=sheets&signs=1").IsOn("signs"));
    }
}
