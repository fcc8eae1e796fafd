using System.Globalization;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Records.Tests.Planning;

public sealed class PlanningBriefTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");

    // The numbers are those by hand of LessonPlanningTests.
    [Fact]
    public void Of_TenMats_SaysTriesWaitingAndTheLastOne()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual);
        var brief = PlanningBrief.Of(planning, English);
        Assert.Equal($"5 tries each are planned; the pupil with fewest has time for {planning.Ranges.FewestTrials.Low} to {planning.Ranges.FewestTrials.High}.", brief.Tries);
        Assert.StartsWith($"Waiting: about {Math.Round(100 * planning.Outlook.WaitingFraction)} % of the time at the mats (", brief.Waiting);
        Assert.StartsWith("The last one is done in minute 20 (", brief.LastDone);
        Assert.EndsWith("practice ends in minute 30.", brief.LastDone);
    }

    [Fact]
    public void Of_TooManyTriesOrNoPractice_SaysSoInBothLanguages()
    {
        var late = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(2, 6), PlanningChoice.Usual);
        Assert.Contains("would be done in minute 31", PlanningBrief.Of(late, English).LastDone);
        var none = LessonPlanning.Of(PlannedLesson.Of(phases: [new(PhaseKind.Instruction, 10, "")]), PlannedLesson.Sheet(), PlanningChoice.Usual);
        Assert.Equal("5 tries each are planned, but there is no time at the mats.", PlanningBrief.Of(none, English).Tries);
        foreach (var planning in new[] { late, none })
            Assert.DoesNotMatch(@"[{}]|\b(tries|waiting|mats|minute)\b", string.Join(' ', PlanningBrief.Of(planning, CultureInfo.GetCultureInfo("es-ES")).Lines));
    }
}
