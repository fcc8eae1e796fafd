using Slantwise.Desk.Pages.Halls;
using Slantwise.Records.Halls;
using Slantwise.Surface.Tests.Desk.Evidence;

namespace Slantwise.Surface.Tests.Desk.Halls;

public sealed class HallDraftTests
{
    private static readonly SchoolHall Kept = new()
    {
        SchoolId = Guid.Empty, Id = Guid.Empty, Name = "Hall", WidthM = 20.5, DepthM = 12, Things = [new("Stage", 0, 10, 8, 2, true), new("", 3.25, 1, 0.4, 0.4, false)],
    };

    [Fact]
    public void Of_AKeptHall_ComesBackEqual()
    {
        using var spoken = new Spoken("es-ES");
        var back = HallDraft.Of(Kept).Hall!;
        Assert.Equal((Kept.Name, Kept.WidthM, Kept.DepthM), (back.Name, back.WidthM, back.DepthM));
        Assert.Equal(Kept.Things, back.Things);
    }

    [Theory]
    [InlineData("12,5", 12.5)]
    [InlineData(" 12.5 ", 12.5)]
    [InlineData("twelve", null)]
    [InlineData("", null)]
    [InlineData("1e3", null)]
    [InlineData("1,000.5", null)]
    public void Read_PointOrComma_GivesTheSameMetres(string text, double? expected) => Assert.Equal(expected, MetresText.Read(text));

    [Fact]
    public void Hall_BadNumbers_IsNoneAndLosesNothing()
    {
        using var spoken = new Spoken("en-GB");
        var draft = HallDraft.Of(Kept);
        draft.Width = "2o";
        draft.Things[1].Left = "-3";
        Assert.Null(draft.Hall);
        Assert.Contains("2 to 200 metres", HallDraft.SideProblem(draft.Width));
        Assert.Contains("0 or more", ThingDraft.PlaceProblem(draft.Things[1].Left, null));
        Assert.Equal(("2o", "-3", "Stage"), (draft.Width, draft.Things[1].Left, draft.Things[0].Name));
        // The drawing goes on with what can be read.
        draft.Width = "24";
        Assert.Equal((24, 1), (draft.Shown.WidthM, draft.Shown.Things.Count));
        draft.Width = "2o";
        Assert.Equal(24, draft.Shown.WidthM);
        draft.Things[1].Left = "30";
        Assert.Contains("outside", ThingDraft.PlaceProblem(draft.Things[1].Left, 24));
    }

    [Theory]
    [InlineData("0", "1", "1", "1", "mats")]
    [InlineData("8", "1", "2", "1", "short")]
    [InlineData("8", "2", "1", "11", "clear")]
    public void Sizes_BadNumber_ChangesNothingElse(string count, string length, string width, string clear, string what)
    {
        using var spoken = new Spoken("en-GB");
        var before = new HallLayout { MatLengthM = 1.831, MatWidthM = 1.22, ClearM = 1, WallClearM = 1 };
        var sizes = new SpaceSizes(8, before) { Count = count, Length = length, Width = width, Clear = clear, WallClear = "0,5" };
        var after = sizes.On(before);
        Assert.Equal(0.5, after.WallClearM);
        Assert.Equal(what == "mats", sizes.CountProblem is not null);
        Assert.Equal(what == "short", sizes.WidthProblem is not null);
        Assert.Equal(what == "clear", SpaceSizes.ClearProblem(clear) is not null);
        if (what == "short") Assert.Equal((1.831, 1.22), (after.MatLengthM, after.MatWidthM));
        if (what == "clear") Assert.Equal(1, after.ClearM);
    }

    [Fact]
    public void Sizes_Untouched_KeepTheDigitsThatAreNotShown()
    {
        using var spoken = new Spoken("es-ES");
        var before = new HallLayout { MatLengthM = 1.8312, MatWidthM = 1.2234, ClearM = 1, WallClearM = 1 };
        Assert.Equal(before, new SpaceSizes(8, before).On(before));
    }
}
