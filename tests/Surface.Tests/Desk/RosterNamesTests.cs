using Slantwise.Desk.Pages.Classes;
using Slantwise.Records.Schools;

namespace Slantwise.Surface.Tests.Desk;

public sealed class RosterNamesTests
{
    private static readonly Pupil Known = PupilOf(1, "7B-01");

    [Theory]
    [InlineData("7B-02", true)]
    [InlineData("Ñu3", true)]
    [InlineData("", false)]
    [InlineData("7B 02", false)]
    [InlineData("7B-0200000000", false)]
    [InlineData("7b-01", false)]
    public void FindingOf_ACode_TakesShortOnesThatAreFree(string code, bool isTaken) =>
        Assert.Equal(isTaken, RosterNames.FindingOf(PupilOf(2, code), [Known]) is null);

    [Fact]
    public void FindingOf_APupilUnchanged_IsNone() => Assert.Null(RosterNames.FindingOf(Known, [Known]));

    [Theory]
    [InlineData("7B", false)]
    [InlineData("7b", false)]
    [InlineData("", false)]
    [InlineData("7C", true)]
    public void FindingOf_AClassName_TakesOnesUnlikeOthers(string name, bool isTaken)
    {
        var known = new SchoolClass { SchoolId = Guid.Empty, Id = Known.Id, Name = "7B" };
        Assert.Equal(isTaken, RosterNames.FindingOf(known with { Id = Guid.Empty, Name = name }, [known]) is null);
    }

    private static Pupil PupilOf(int number, string code) =>
        new() { SchoolId = Guid.Empty, Id = Guid.Parse($"00000000-0000-7000-8000-{number:000000000000}"), Code = code };
}
