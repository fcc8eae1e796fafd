using CsCheck;
using Slantwise.Records.Units;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Units;

public sealed class UnitCopyTests
{
    private static readonly Gen<TeachingUnit> AnyUnit = Gen.Select(Gen.String[0, 20], Gen.Guid.List[0, 4], Gen.Select(Gen.String[0, 10], Gen.Guid, Gen.Bool, Gen.Guid.List[0, 3], Gen.String[0, 9].List[0, 3]).List[0, 6])
        .Select((notes, outcomes, lessons) => Unit(new()
        {
            Notes = notes,
            Outcomes = [.. outcomes.Distinct().Select((id, i) => new Outcome(id, $"C{i}", $"words {i}", "F"))],
            Lessons = [.. lessons.Select(l => new PlannedUnitLesson(l.Item1, l.Item3 ? l.Item2 : null, [.. l.Item4.Select(t => new UnitTask(t, outcomes.Distinct().Take(1).ToList()))], l.Item5))],
        }));

    [Fact]
    public void Of_AnyUnit_CopiesThePlanAndNothingOfTheCalendar() => Gen.Select(AnyUnit, Gen.Guid, Gen.Guid).Sample((unit, id, classId) =>
    {
        var copy = UnitCopy.Of(unit, id, classId, "Again", new DateOnly(2028, 3, 6));
        Assert.Equal((unit.SchoolId, id, classId, "Again", new DateOnly(2028, 3, 6)), (copy.SchoolId, copy.Id, copy.ClassId, copy.Name, copy.FirstDay));
        Assert.Equal(unit.Content.Outcomes, copy.Content.Outcomes);
        Assert.Equal(unit.Content.Notes, copy.Content.Notes);
        Assert.All(copy.Content.Lessons, l => Assert.Null(l.LessonId));
        Assert.Equal(unit.Content.Lessons.Select(Plan), copy.Content.Lessons.Select(Plan));
    });

    [Fact]
    public void Of_ListsOfTheOriginalChangedAfterwards_TheCopyStays()
    {
        // Lists that can be changed, as a page or a reader of JSON may hand them over.
        List<Outcome> outcomes = [Still];
        List<Guid> ids = [Still.Id];
        List<UnitTask> tasks = [new(Still.Id, ids)];
        List<string> aims = ["one"];
        List<PlannedUnitLesson> lessons = [new("L", Guid.NewGuid(), tasks, aims)];
        var copy = UnitCopy.Of(Unit(new() { Outcomes = outcomes, Lessons = lessons }), Guid.NewGuid(), Guid.NewGuid(), "Again", null);
        var before = (copy.Content.Outcomes.Count, Plan(copy.Content.Lessons[0]));
        outcomes.Clear();
        ids.Clear();
        aims.Add("two");
        tasks.Clear();
        lessons.Clear();
        Assert.Equal(before, (copy.Content.Outcomes.Count, Plan(copy.Content.Lessons[0])));
    }

    private static string Plan(PlannedUnitLesson l) => $"{l.Title}|{string.Join(',', l.Tasks.Select(t => $"{t.TaskId}:{string.Join('+', t.OutcomeIds)}"))}|{string.Join(',', l.Aims)}";
}
