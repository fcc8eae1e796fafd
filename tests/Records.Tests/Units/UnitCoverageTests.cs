using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tests.Evidence;
using Slantwise.Records.Units;
using static Slantwise.Records.Tests.Units.UnitSamples;

namespace Slantwise.Records.Tests.Units;

public sealed class UnitCoverageTests
{
    [Fact]
    public void Of_PlannedAndTried_CountsPupilsAndTriesOfItsTasksOnly()
    {
        var first = Lesson(1).Set("Ana", 1, 1, tries: "1 0 1").Set("Ana", 2, 2, tries: "1").Set("Ben", 1, 1, tries: "0").Set("Chi", 1, 4, tries: "1 1", task: 2).Record();
        var content = new UnitContent { Outcomes = [Still, Soft, Talk], Lessons = [Of(first, Task(1, Still), Task(2, Soft)), Of(null, Task(1, Still))] };
        var coverage = UnitCoverage.Of(content, [first]);
        // By hand: Ana 4 tries and Ben 1 at the stork, Chi 2 at the frog; the second lesson is only planned.
        Assert.Equal([new(1, 2, 5), new(1, 0, 0)], coverage.Outcomes[0].Lessons);
        Assert.Equal([new(1, 1, 2), new(0, 0, 0)], coverage.Outcomes[1].Lessons);
        Assert.Equal((2, 2), (coverage.Outcomes[0].PlannedLessonCount, coverage.Outcomes[0].TriedPupilCount));
        Assert.Equal([Talk], coverage.Unplanned);
        Assert.Empty(coverage.LessonsWithoutOutcome);
    }

    [Fact]
    public void Of_LessonWithoutOutcome_IsNamedByNumber() =>
        Assert.Equal([2], UnitCoverage.Of(new() { Outcomes = [Still], Lessons = [Of(null, Task(1, Still)), Of(null, Task(2))] }, []).LessonsWithoutOutcome);

    [Fact]
    public void Of_RecordOfAnotherLesson_IsPassedOver()
    {
        var other = Lesson(2).Set("Ana", 1, 1, tries: "1").Record();
        Assert.Equal(new(1, 0, 0), UnitCoverage.Of(new() { Outcomes = [Still], Lessons = [Of(null, Task(1, Still))] }, [other]).Outcomes[0].Lessons[0]);
    }

    private static readonly Gen<(UnitContent Content, List<LessonRecord> Records)> AnyUnit =
        Gen.Select(Gen.Select(Gen.Int[0, 7], Gen.Int[1, 2], Gen.Int[1, 2], Gen.Int[0, 3]).List[0, 12].List[1, 4], Gen.Int[0, 7].List[1, 8], Gen.Bool).Select((lessons, ties, isLastTied) =>
        {
            var records = lessons.Select((sets, i) =>
            {
                var builder = Lesson(i + 1);
                foreach (var (pupil, task, set, tries) in sets.DistinctBy(s => (s.Item1, s.Item2, s.Item3)))
                    builder.Set(Names[pupil], set, task == 1 ? 1 : 4, tries: string.Join(' ', Enumerable.Repeat("1", tries)), task: task);
                return builder.Record();
            }).ToList();
            Outcome[] outcomes = [Still, Soft, Talk];
            var content = new UnitContent
            {
                Outcomes = outcomes,
                Lessons = [.. records.Select((r, i) => Of(
                    i < records.Count - 1 || isLastTied ? r : null,
                    [.. Enumerable.Range(1, 2).Select(task => Task(task, [.. outcomes.Where((_, o) => (ties[(i * 2 + task) % ties.Count] >> o & 1) == 1)]))]))],
            };
            return (content, records);
        });

    [Fact]
    public void Of_AnyUnit_CountsWhatTheEntriesCount() => AnyUnit.Sample(unit =>
    {
        var coverage = UnitCoverage.Of(unit.Content, unit.Records);
        for (var o = 0; o < unit.Content.Outcomes.Count; o++)
        {
            var everybody = new HashSet<Guid>();
            for (var l = 0; l < unit.Content.Lessons.Count; l++)
            {
                // The plain way: entry by entry.
                var (planned, tries, pupils) = (0, 0, new HashSet<Guid>());
                foreach (var task in unit.Content.Lessons[l].Tasks)
                {
                    if (!task.OutcomeIds.Contains(unit.Content.Outcomes[o].Id)) continue;
                    planned++;
                    foreach (var record in unit.Records)
                    {
                        if (record.Lesson.Id != unit.Content.Lessons[l].LessonId) continue;
                        foreach (var entry in record.Entries)
                        {
                            if (entry.Fact is not Trial || entry.TaskId != task.TaskId) continue;
                            tries++;
                            pupils.Add(entry.PupilId!.Value);
                        }
                    }
                }
                everybody.UnionWith(pupils);
                Assert.Equal(new CoverageCell(planned, pupils.Count, tries), coverage.Outcomes[o].Lessons[l]);
            }
            Assert.Equal(everybody.Count, coverage.Outcomes[o].TriedPupilCount);
        }
        var rows = UnitCoverageTable.Of(unit.Content, unit.Records).Rows;
        Assert.Equal(unit.Content.Outcomes.Count * unit.Content.Lessons.Count, rows.Count);
        Assert.Equal(coverage.Outcomes.SelectMany(x => x.Lessons).Sum(c => c.TryCount), rows.Sum(r => (int)r[^1]!));
    }, iter: 200);
}
