using System.Globalization;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Desk.Floor;

public sealed class FloorTextTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 26, 9, 0, 0, TimeSpan.Zero);

    public FloorTextTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en");

    [Theory]
    [InlineData(0, "now")]
    [InlineData(39, "now")]
    [InlineData(41, "1 minute ago")]
    [InlineData(150, "2 minutes ago")]
    [InlineData(3600, "60 minutes ago")]
    // A clock that was set back between.
    [InlineData(-5, "now")]
    public void Seen_SomeTimeAgo_IsSaidInWords(int agoS, string said) => Assert.Equal(said, FloorText.Seen(Device(seenAt: Now.AddSeconds(-agoS)), Now));

    [Fact]
    public void Seen_NeverOrLeft_SaysThat()
    {
        Assert.Equal("not since the program started", FloorText.Seen(Device(), Now));
        Assert.Equal("has left", FloorText.Seen(Device(seenAt: Now) with { HasLeft = true }, Now));
    }

    [Fact]
    public void Serves_EachKind_SaysForWhomAndNamesNoStranger()
    {
        var record = PaperLessons.Of(2, PaperLessons.OneFoot);
        var (first, second) = (record.Pupils[0], record.Pupils[1]);
        Assert.Equal($"{first.Label}, {second.Label}", FloorText.Serves(Device(FloorDeviceKind.Pair, first.Id, second.Id), record));
        Assert.Equal("nobody yet", FloorText.Serves(Device(), record));
        Assert.Equal("the whole class", FloorText.Serves(Device(FloorDeviceKind.Station), record));
        Assert.Equal("–", FloorText.Serves(Device(FloorDeviceKind.Board), record));
        Assert.Equal("somebody who is not in the class now", FloorText.Serves(Device(FloorDeviceKind.Pupil, Guid.NewGuid()), record));
    }

    [Fact]
    public void Unsent_OnSomeDevices_NamesThemWithTheirCounts()
    {
        Assert.Null(FloorText.Unsent([]));
        Assert.Null(FloorText.Unsent([Device()]));
        Assert.Equal("1 entry is not here yet: Tablet 2 (1).", FloorText.Unsent([Device(), Device() with { Name = "Tablet 2", UnsentCount = 1 }]));
        Assert.Equal(
            "5 entries are not here yet: Tablet 2 (1), Tablet 3 (4).",
            FloorText.Unsent([Device() with { Name = "Tablet 2", UnsentCount = 1 }, Device() with { Name = "Tablet 3", UnsentCount = 4 }]));
    }

    [Theory]
    [InlineData("3", "Device 3")]
    [InlineData("Blue mat", "Blue mat")]
    public void Name_ANumberAlone_SaysOfWhat(string name, string said) => Assert.Equal(said, FloorText.Name(Device() with { Name = name }));

    [Fact]
    public void Refused_EveryKind_HasWords() => Assert.All(Enum.GetValues<FloorProblemKind>(), kind => Assert.NotEmpty(FloorText.Refused(kind)));

    private static DeviceSeen Device(FloorDeviceKind kind = FloorDeviceKind.Pupil, params Guid[] pupils) => new("d", "Tablet 1", kind, pupils, false, null, 0, false);

    private static DeviceSeen Device(DateTimeOffset seenAt) => Device() with { SeenAt = seenAt };
}
