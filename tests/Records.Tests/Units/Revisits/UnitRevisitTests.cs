using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Tests.Evidence;
using Slantwise.Records.Units;
using Slantwise.Records.Units.Revisits;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Units.Revisits;

public sealed class UnitRevisitTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    [Fact]
    public void Of_NoLessonWithTries_AsksNothing()
    {
        var revisit = UnitRevisit.Of(new() { Outcomes = [Still], Lessons = [Of(null, Task(1, Still))] }, [], _ => "?");
        Assert.Equal((0, 0), (revisit.TriedLessonCount, revisit.Items.Count));
    }

    [Fact]
    public void Of_OneLesson_AsksOfOutcomesCuesAndLevelsWithTheirCounts()
    {
        var builder = Lesson(1);
        // Six pupils, cue 1 ticked, cue 2 left open by five of them; nobody at level 3; nobody at the frog.
        foreach (var (name, i) in Names.Take(6).Select((n, i) => (n, i))) builder.Set(name, 1, i % 2 + 1, tries: "1 1", cues: i == 0 ? "1 2" : "1");
        var lesson = builder.Record();
        var content = new UnitContent { Outcomes = [Still, Soft], Lessons = [Of(lesson, Task(1, Still), Task(2, Soft)), Of(null, Task(2, Soft))] };
        var items = UnitRevisit.Of(content, [lesson], _ => "Frog").Items;
        Assert.Equal([ReviewKind.Outcome, ReviewKind.NotEnough, ReviewKind.Cue, ReviewKind.Level], items.Select(i => i.Kind));
        Assert.Equal("Lands softly: lessons with its tasks took place (lessons 1, tasks 1), and no try is written down.", items[0].Reason(English));
        Assert.Equal("Frog: not enough tries yet to say anything (tries 0, pupils 0).", items[1].Reason(English));
        // By hand: Wilson 90 % of 5 of 6 is 0.497 to 0.962, in tenths outward 4 to 10.
        Assert.Equal("Stork: “Hips level” was left open by 5 of 6 pupils the last time they looked; likely 4 to 10 in 10.", items[2].Reason(English));
        Assert.StartsWith("Stork: nobody chose level 3", items[3].Reason(English), StringComparison.Ordinal);
        Assert.DoesNotContain(items, i => Names.Any(n => i.Reason(English).Contains(n, StringComparison.Ordinal)));
        Assert.All(items, i => Assert.EndsWith("?", i.Question(CultureInfo.GetCultureInfo("es")), StringComparison.Ordinal));
    }

    [Fact]
    public void Of_FewPupils_SaysThatThatIsNotEnough()
    {
        var lesson = Lesson(1).Set("Ana", 1, 1, tries: "0 0 0 0 0", cues: "", decision: NextLevel.Harder).Record();
        var items = UnitRevisit.Of(new() { Lessons = [Of(lesson, Task(1))] }, [lesson], _ => "?").Items;
        Assert.Equal([ReviewKind.NotEnough], items.Select(i => i.Kind));
        Assert.Equal("Stork: not enough tries yet to say anything (tries 5, pupils 1).", items[0].Reason(English));
    }

    [Fact]
    public void Of_LessonsTheUnitIsNotTiedTo_ArePassedOver()
    {
        var builder = Lesson(2);
        foreach (var name in Names) builder.Set(name, 1, 1, tries: "0", cues: "");
        Assert.Equal(0, UnitRevisit.Of(new() { Lessons = [Of(null, Task(1))] }, [builder.Record()], _ => "?").TriedLessonCount);
    }
}
