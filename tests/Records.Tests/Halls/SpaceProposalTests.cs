using CsCheck;
using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Halls;
using Slantwise.Records.Tests.Planning;
using static Slantwise.Records.Tests.Halls.SampleHall;

namespace Slantwise.Records.Tests.Halls;

public sealed class SpaceProposalTests
{
    private static readonly Guid First = new(7, 0, 0, new byte[8]);
    private static readonly Guid Second = new(8, 0, 0, new byte[8]);
    private static readonly TaskFall[] Falls = [new(First, "one", 1.4, FallGround.Posture, 1), new(Second, "two", 0.8, FallGround.ClearSpace, null)];

    [Fact]
    public void LaidOut_AnyHall_NothingClashesAndStationsShareEvenly() => Any.Sample(s =>
    {
        var layout = s.Layout with { Stations = [.. s.Layout.Stations.Select((station, i) => station with { TaskId = i % 2 == 0 ? First : Second })] };
        var laid = SpaceProposal.LaidOut(s.Hall, layout, 9, Falls);
        Assert.Empty(LayoutClashes.Of(s.Hall.OnFloor(), laid.Need(), laid.Placed()));
        Assert.True(laid.Mats.Count <= 9);
        if (layout.Stations.Count == 0)
        {
            Assert.All(laid.Mats, m => Assert.Equal((null, 1.4), (m.Station, m.FallM)));
            return;
        }
        var counts = Enumerable.Range(1, layout.Stations.Count).Select(n => laid.Mats.Count(m => m.Station == n)).ToList();
        Assert.True(counts.Max() - counts.Min() <= 1 && counts.Sum() == laid.Mats.Count);
        Assert.All(laid.Mats, m => Assert.Equal(m.Station % 2 == 1 ? 1.4 : 0.8, m.FallM));
    }, iter: 15);

    [Fact]
    public void LaidOut_NoRoom_HasFewerMatsThanAsked()
    {
        // By hand: 4 × 4 m less a metre all round leave 2 × 2 m: one mat of 2 × 1 m, and a second one would need a metre between.
        var laid = SpaceProposal.LaidOut(SampleHall.Of(4, 4), Layout(), 5, []);
        Assert.Single(laid.Mats);
        Assert.NotNull(laid.TeacherXM);
    }

    [Fact]
    public void Shared_MatsInARow_KeepsNeighboursTogether()
    {
        var layout = Layout(1, 1, Mat(9, 2), Mat(1, 2), Mat(5, 2), Mat(7, 2), Mat(3, 2)) with { Stations = [new("a", null), new("b", null)] };
        // By hand, from the left: 1, 3, 5 metres are the first station's, 7 and 9 the second's.
        Assert.Equal([2, 1, 1, 2, 1], SpaceProposal.Shared(layout).Mats.Select(m => m.Station!.Value));
        Assert.All(SpaceProposal.Shared(layout with { Stations = [] }).Mats, m => Assert.Null(m.Station));
    }

    [Theory]
    [InlineData(28, 10, 10)]
    [InlineData(27, null, 14)]
    [InlineData(0, null, 1)]
    [InlineData(28, 400, 100)]
    public void MatCount_OfALesson_IsPlannedOrOneForTwo(int pupils, int? planned, int expected) =>
        Assert.Equal(expected, SpaceProposal.MatCount(PlannedLesson.Of(pupils, planned)));

    [Fact]
    public void Start_AfterALesson_TakesItsSizesAndNoMat()
    {
        var before = Layout(1.5, 0.5, Mat(2, 2)) with { AgeYears = 9, TeacherXM = 1, TeacherYM = 1, Stations = [new("a", null)], StationMin = 6 };
        var start = SpaceProposal.Start(before);
        Assert.Equal((1.5, 0.5, 9, 0, 0), (start.ClearM, start.WallClearM, start.AgeYears, start.Mats.Count, start.Stations.Count));
        Assert.Null(start.Teacher());
        Assert.Null(start.StationMin);
    }
}
