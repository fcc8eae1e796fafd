using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Schools;
using Slantwise.Records.Tests.Units;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Evidence.Reviews;

public sealed class LessonDebriefTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    [Fact]
    public void Of_NoLastTime_HasTheOpenQuestions()
    {
        var debrief = LessonDebrief.Of(Lesson(1).Record().Sheet!.Content, null);
        Assert.Equal((null, 0, 3, false), (debrief.LastDay, debrief.Items.Count, debrief.OpenQuestionKeys.Count, debrief.HasTooLittle));
        Assert.All(debrief.OpenQuestionKeys, k => Assert.EndsWith("?", LessonDebrief.OpenQuestion(k, English), StringComparison.Ordinal));
    }

    [Fact]
    public void Of_LastTimeWithOtherTasks_IsNotLookedAt()
    {
        var before = new LessonBuilder(1).Pupils(Names).Task(9, "Rope", ["Softly"], (7, 3, null));
        foreach (var name in Names) before.Set(name, 1, 7, tries: "1", cues: "", task: 9);
        Assert.Null(LessonDebrief.Of(Lesson(2).Record().Sheet!.Content, before.Record()).LastDay);
    }

    [Fact]
    public void Of_FewTriesLastTime_SaysSoAndAsksOpenly()
    {
        var debrief = LessonDebrief.Of(Lesson(2).Record().Sheet!.Content, Lesson(1).Set("Ana", 1, 1, tries: "0 0 0 0 0", cues: "", decision: NextLevel.Harder).Record());
        Assert.True(debrief.HasTooLittle);
        Assert.Equal(3, debrief.OpenQuestionKeys.Count);
    }

    [Fact]
    public void Of_PatternsOfManyKinds_TakesOneOfEachAndNamesNobody()
    {
        var before = Lesson(1);
        // Six pupils predicted 5 of 5 and reached 1; all stay; both cues open.
        foreach (var name in Names.Take(6)) before.Set(name, 1, 1, predicted: 5, tries: "1 0 0 0 0", cues: "", decision: NextLevel.Same);
        var debrief = LessonDebrief.Of(Lesson(2).Record().Sheet!.Content, before.Record());
        Assert.Equal([ReviewKind.Cue, ReviewKind.Decisions, ReviewKind.Predictions], debrief.Items.Select(i => i.Kind));
        Assert.Empty(debrief.OpenQuestionKeys);
        // By hand: 6 sets, 1 of 5 each: fewer than 6 in 10, six decisions for the same; predicted 5, came 1, so 4 above.
        Assert.Equal("After 6 sets with fewer than 6 in 10, made by 6 pupils: easier 0, the same 6, harder 0.", debrief.Items[1].Reason(English));
        Assert.Equal("In 6 sets of 6 pupils the prediction was 4 tries above what came, on average.", debrief.Items[2].Reason(English));
        Assert.DoesNotContain(debrief.Items, i => Names.Any(n => (i.Reason(English) + i.Question(English)).Contains(n, StringComparison.Ordinal)));
    }

    [Fact]
    public void Of_LevelThePolicyLeavesToNobody_IsNotAskedAbout()
    {
        var before = new LessonBuilder(1).Pupils(Names).Task(1, "Stork", [], (1, 3, null), (2, 5, BodyDemand.HeadWeight));
        foreach (var name in Names) before.Set(name, 1, 1, tries: "1");
        var record = before.Record();
        Assert.DoesNotContain(LessonDebrief.Of(record.Sheet!.Content, record).Items, i => i.Kind == ReviewKind.Level);
    }
}
