using Slantwise.Records.Groups;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Groups;

public sealed class GroupListTests
{
    private static Pupil Pupil(int number, string? name) => new() { SchoolId = Guid.Empty, Id = new Guid(number, 0, 0, new byte[8]), Code = $"K{number}", DisplayName = name };

    [Fact]
    public void Of_NamesThatAreShared_AreToldApart()
    {
        Pupil[] pupils = [Pupil(1, "Ada Stone"), Pupil(2, "Ada Wood"), Pupil(3, "Ben Hill"), Pupil(4, "Ben Hill"), Pupil(5, "Cleo May Roe"), Pupil(6, null)];
        var plan = new GroupPlan { Groups = [new([.. pupils.Select(p => p.Id)], [], [])] };
        Assert.Equal(["Ada Stone", "Ada Wood", "Ben Hill (K3)", "Ben Hill (K4)", "Cleo", "K6"], GroupList.Of(pupils, plan, [], null).Groups[0].Names);
    }

    // By hand: of three groups at two stations the first and the third begin at the first one.
    [Fact]
    public void Of_AHallWithStations_SaysWhereEachGroupBegins()
    {
        Pupil[] pupils = [Pupil(1, "A"), Pupil(2, "B"), Pupil(3, "C")];
        var plan = new GroupPlan { Groups = [.. pupils.Select((p, i) => new LessonGroup([p.Id], [p.Id], i == 0 ? [1, 2, 3] : []))] };
        var list = GroupList.Of(pupils, plan, ["Rolls", "Ropes"], 6);
        Assert.Equal(["Rolls", "Ropes", "Rolls"], list.Groups.Select(g => g.FirstStation));
        Assert.Equal(("1–3", 3, ""), (list.Groups[0].Mats, list.Groups[0].MatCount, list.Groups[1].Mats));
        Assert.Equal(6, list.StationMin);
        Assert.Null(GroupList.Of(pupils, plan, [], 6).StationMin);
    }
}
