using System.Globalization;
using CsCheck;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using static Slantwise.Records.Tests.Halls.SampleHall;

namespace Slantwise.Records.Tests.Halls;

public sealed class StationPlanTests
{
    // 5 min organising, 7 talk, 12 practice, 3 talk, 9 practice, 4 organising.
    private static readonly LessonPhase[] Phases =
    [
        new(PhaseKind.Management, 5, ""), new(PhaseKind.Instruction, 7, ""), new(PhaseKind.Activity, 12, ""), new(PhaseKind.Instruction, 3, ""),
        new(PhaseKind.Activity, 9, ""), new(PhaseKind.Management, 4, ""),
    ];

    private static HallLayout Stations(int count, int? min) => Layout() with { Stations = [.. Enumerable.Range(1, count).Select(i => new HallStation($"s{i}", null))], StationMin = min };

    [Fact]
    public void Of_RoundsAroundATalk_FollowTheClockOfTheLesson()
    {
        // By hand: practice is minutes 12 to 24 and 27 to 36. Rounds of 6: 12-18, 18-24, 27-33, and the fourth ends 3 minutes late.
        var plan = StationPlan.Of(Stations(4, 6), Phases, null)!;
        Assert.Equal([(12, 18), (18, 24), (27, 33), (33, 39)], plan.Rounds.Select(r => (r.StartMin, r.EndMin)));
        Assert.Equal([false, false, false, true], plan.Rounds.Select(r => r.IsLate));
        Assert.All(plan.Rounds, r => Assert.False(r.IsInterrupted));
        Assert.Equal((24, 21, 4), (plan.NeededMin, plan.PracticeMin, plan.GroupCount));
        Assert.Equal([StationWarning.TooLong], plan.Warnings);
        Assert.Equal("All rounds take 24 min; practice is 21 min. What else would go: fewer minutes a station, fewer stations, more practice.",
            StationWording.Of(plan.Warnings[0], plan, CultureInfo.GetCultureInfo("en-GB")));
    }

    [Fact]
    public void Of_ARoundAcrossATalk_IsInterrupted()
    {
        // By hand: rounds of 7: 12-19, then 19 to 24 and on from 27 to 29, then 29-36.
        var plan = StationPlan.Of(Stations(3, 7), Phases, 5)!;
        Assert.Equal([(12, 19), (19, 29), (29, 36)], plan.Rounds.Select(r => (r.StartMin, r.EndMin)));
        Assert.Equal([false, true, false], plan.Rounds.Select(r => r.IsInterrupted));
        Assert.Equal([StationWarning.Interrupted, StationWarning.Shared], plan.Warnings);
    }

    [Fact]
    public void Of_NoMinutesSaid_SharesPracticeOut()
    {
        // By hand: 21 minutes of practice for four stations are 5 each.
        Assert.Equal(20, StationPlan.Of(Stations(4, null), Phases, null)!.NeededMin);
        var unplanned = StationPlan.Of(Stations(2, null), [], null)!;
        Assert.Equal([(0, 5), (5, 10)], unplanned.Rounds.Select(r => (r.StartMin, r.EndMin)));
        Assert.Equal([StationWarning.NoPractice], unplanned.Warnings);
    }

    [Fact]
    public void Of_AStationWithoutAMat_IsSaid()
    {
        var layout = Stations(2, 5) with { Mats = [Mat(2, 2, station: 1)] };
        Assert.Contains(StationWarning.WithoutMat, StationPlan.Of(layout, Phases, null)!.Warnings);
        Assert.DoesNotContain(StationWarning.WithoutMat, StationPlan.Of(layout with { Mats = [Mat(2, 2, station: 1), Mat(6, 2, station: 2)] }, Phases, null)!.Warnings);
    }

    [Fact]
    public void Of_NoStations_IsNone() => Assert.Null(StationPlan.Of(Layout(), Phases, 3));

    [Fact]
    public void Of_AnyRotation_EveryGroupVisitsEveryStationOnceInPracticeTime() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 20], Gen.Int[1, 60]).Sample((stations, groups, min) =>
        {
            var plan = StationPlan.Of(Stations(stations, min), Phases, groups)!;
            for (var g = 0; g < groups; g++) Assert.Equal(Enumerable.Range(0, stations), plan.Rounds.Select(r => r.Stations[g]).Order());
            // What a round lasts on the clock is its minutes and the talk in between, 3 minutes.
            Assert.All(plan.Rounds, r => Assert.Equal(min + (r.IsInterrupted ? 3 : 0), r.EndMin - r.StartMin));
            Assert.All(plan.Rounds.Zip(plan.Rounds.Skip(1)), p => Assert.True(p.Second.StartMin >= p.First.EndMin));
            foreach (var language in new[] { "en", "es" })
                Assert.All(plan.Warnings, w => Assert.DoesNotContain("{", StationWording.Of(w, plan, CultureInfo.GetCultureInfo(language))));
        });
}
