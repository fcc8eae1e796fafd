using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;
using Slantwise.Records.Tests.Stores;

namespace Slantwise.Records.Tests.Scans;

public sealed class PrintedLayoutTests
{
    private static readonly Guid School = SampleSchool.IdOf(0xA1);

    [Fact]
    public void Form_OfAKeptLayout_IsItToAHundredthOfAMillimetre()
    {
        var form = PrintedLayout.Of(School, Layout(15.004), [7, 1L << 39]).Form();
        Assert.Equal(15, form.Layout.Fields[0].XMm);
        Assert.Equal(5.5, form.Layout.Fields[0].WidthMm);
        Assert.Equal(("Held-1-1-1", "Trial-1-1-1", true), (form.Layout.Fields[0].Key, form.Layout.Fields[0].Group, form.Layout.Fields[0].IsRound));
        Assert.Equal(new Anchor(9, 9, 5, true), form.Layout.Anchors[0]);
        Assert.Equal(new CodePlace(175, 262, 20), form.Layout.Code);
        Assert.Equal(new WrittenField("Because-1-1-0", 120, 200, 60, 8), form.Layout.Writings[0]);
        Assert.Equal([7, 1L << 39], form.RowTags);
        // What is kept again is the same text.
        Assert.Equal(PrintedLayout.Of(School, Layout(15.004), [7, 1L << 39]), PrintedLayout.Of(School, form.Layout, form.RowTags));
    }

    [Fact]
    public void Tag_OfWhatDiffers_Differs()
    {
        var tag = PrintedLayout.Of(School, Layout(15)).Tag;
        Assert.Equal(tag, PrintedLayout.Of(School, Layout(15.004)).Tag);
        Assert.NotEqual(tag, PrintedLayout.Of(School, Layout(15.01)).Tag);
        Assert.NotEqual(tag, PrintedLayout.Of(School, Layout(15), [1]).Tag);
    }

    [Theory]
    [InlineData(2, "{}")]
    [InlineData(1, "{")]
    [InlineData(1, "null")]
    [InlineData(1, "{}")]
    [InlineData(1, """{"layout":{"widthMm":1},"rowTags":[]}""")]
    public void Form_OfATextThatIsNone_Throws(int format, string text) => Assert.Throws<InvalidDataException>(
        () => new PrintedLayout { SchoolId = School, Tag = 1, Format = format, Text = text }.Form());

    // A text as the first edition kept it: by hand. Whatever later editions print, this stays readable.
    [Fact]
    public void Form_OfTheFirstFormat_StaysReadable()
    {
        const string Text = """
            {"layout":{"widthMm":210,"heightMm":297,"anchors":[{"xMm":9,"yMm":9,"sizeMm":5,"isHollow":true}],"code":{"xMm":175,"yMm":262,"sizeMm":20},
            "fields":[{"key":"Level-1-1-2","group":"Level-1-1","xMm":27.5,"yMm":180.25,"widthMm":5.5,"heightMm":5.5,"isRound":true}],
            "writings":[{"key":"OwnWords-1-0-0","xMm":15,"yMm":260,"widthMm":150,"heightMm":20}]},"rowTags":[]}
            """;
        var form = new PrintedLayout { SchoolId = School, Tag = 1, Format = 1, Text = Text }.Form();
        Assert.Equal(new MarkField("Level-1-1-2", "Level-1-1", 27.5, 180.25, 5.5, 5.5, true), Assert.Single(form.Layout.Fields));
    }

    internal static SheetLayout Layout(double fieldXMm) => new(
        210, 297, [new Anchor(9, 9, 5, true)], new CodePlace(175, 262, 20),
        [new MarkField("Held-1-1-1", "Trial-1-1-1", fieldXMm, 180.25, 5.4999999, 5.5, true)], [new WrittenField("Because-1-1-0", 120, 200, 60, 8)]);
}
