using System.Globalization;
using Slantwise.Records.Planning;

namespace Slantwise.Records.Tests.Planning;

public sealed class PlanningReadingTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es-ES");

    // The numbers are those by hand of LessonPlanningTests.
    [Fact]
    public void Of_TenMats_SaysTheFourAnswers()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual);
        var reading = PlanningReading.Of(planning, English);
        var fewest = planning.Ranges.FewestTrials;
        Assert.Equal(
            $"Tries: 5 each are planned. There is room for 12 to 18 each by mean times; where people vary, the pupil with fewest has {fewest.Low} to {fewest.High} (in 90 of 100 of 400 simulated lessons).",
            reading.Tries);
        Assert.StartsWith($"Waiting: about {Math.Round(100 * planning.Outlook.WaitingFraction)} % of the time at the mats a pupil only waits", reading.Waiting);
        Assert.StartsWith("The last one has the 5 planned tries done after 20 min of the lesson", reading.LastDone);
        Assert.Contains("practice ends after 30.", reading.LastDone);
        Assert.Equal("What would give 2 more tries each, any one of these: 14 mats in place of 10; 3 min less talk.", reading.More);
        Assert.Contains(reading.Changes, c => c.StartsWith("14 mats in place of 10: room for 18 tries in place of 12 for the pupil with fewest, waiting "));
        Assert.Contains("Hollis", reading.Shares.Single(s => s.Category == Engines.Planning.Blocks.TimeCategory.Activity).Orientation);
        Assert.All(reading.Shares.Where(s => s.Orientation.Length > 0), s => Assert.StartsWith("For orientation:", s.Orientation));
    }

    [Fact]
    public void Of_InSpanish_WritesNumbersAndWordsInSpanish()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(mats: null, phases: []), null, PlanningChoice.Usual with { RestS = 7.5 });
        var reading = PlanningReading.Of(planning, Spanish);
        Assert.Contains("7,5 s de descanso", string.Join(' ', reading.Grounds));
        var said = string.Join('\n', [.. reading.Answers, .. reading.Changes, reading.Talk, .. reading.Grounds, .. reading.Warnings.Select(w => w.Sentence), .. reading.Shares.Select(s => s.Name + s.Orientation)]);
        Assert.DoesNotMatch(@"\b(tries|mats|lesson|the|of)\b", said);
    }

    [Fact]
    public void Of_EveryWarningAndProblem_HasASentenceWithItsGapsFilled()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(), PlanningChoice.Usual);
        foreach (var culture in new[] { English, Spanish })
        {
            var reading = PlanningReading.Of(planning with { Warnings = Enum.GetValues<PlanningWarning>() }, culture);
            Assert.Equal(Enum.GetValues<PlanningWarning>().Length, reading.Warnings.Select(w => w.Sentence).Distinct().Count());
            Assert.All(Enum.GetValues<PlanningProblem>(), p => Assert.NotEmpty(PlanningWords.Text("Problem" + p, culture)));
        }
    }

    // By hand: 2 sets of 6 take 36 turns of 30 s at a mat of three and a pause of 60 s, 19 min of practice that begins after 12; there are 18.
    [Fact]
    public void Of_TooManyTries_SaysHowLongPracticeWouldHaveToBe()
    {
        var reading = PlanningReading.Of(LessonPlanning.Of(PlannedLesson.Of(), PlannedLesson.Sheet(2, 6), PlanningChoice.Usual), English);
        Assert.StartsWith("For the last one to have the 12 planned tries done, practice would have to go on until minute 31 of the lesson", reading.LastDone);
        Assert.Equal("By mean times practice would have to be about 1 min longer for the last one to finish the planned tries.", Assert.Single(reading.Warnings).Sentence);
    }

    [Fact]
    public void Of_NothingThatHelps_SaysSo()
    {
        var planning = LessonPlanning.Of(PlannedLesson.Of(phases: [new(Lessons.PhaseKind.Instruction, 10, "")]), PlannedLesson.Sheet(), PlanningChoice.Usual);
        var reading = PlanningReading.Of(planning, English);
        Assert.Equal("No change looked at gives 2 more tries each.", reading.More);
        Assert.Equal("Waiting: there is no time at the mats to share out.", reading.Waiting);
        Assert.StartsWith("The last one: without time", reading.LastDone);
        Assert.Empty(reading.Changes);
    }
}
