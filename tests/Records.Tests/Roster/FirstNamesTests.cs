using Slantwise.Records.Roster;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Roster;

public sealed class FirstNamesTests
{
    [Fact]
    public void Of_Labels_IsTheFirstWordOrTheLabelWhereTwoBeginAlike() => Assert.Equal(
        ["Ben A.", "Amara", "Ben B.", "H-04"],
        FirstNames.Of([Of(1, "Ben A."), Of(2, " Amara Okafor"), Of(3, "Ben B."), Of(4, null)]));

    [Fact]
    public void Of_OtherLabels_TakesThem() => Assert.Equal(["x", "x"], FirstNames.Of([Of(1, "Ben"), Of(2, "Ana")], p => "x y").Select(n => n[..1]));

    private static Pupil Of(int number, string? name) => new() { SchoolId = Guid.Empty, Id = new(number, 0, 0, new byte[8]), Code = $"H-{number:00}", DisplayName = name };
}
