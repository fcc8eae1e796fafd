using Slantwise.Records.Evidence;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Units;

/// <summary>Outcomes against lessons: what is planned where, and where there were tries. Counts of what was done, never a mark of how well.</summary>
public sealed record UnitCoverage
{
    /// <summary>A row an outcome, in the order of the unit.</summary>
    public required IReadOnlyList<OutcomeCoverage> Outcomes { get; init; }

    /// <summary>Outcomes that no lesson works towards.</summary>
    public IReadOnlyList<Outcome> Unplanned => [.. Outcomes.Where(o => o.PlannedLessonCount == 0).Select(o => o.Outcome)];

    /// <summary>Lessons, by number from 1, with no task that works towards an outcome.</summary>
    public required IReadOnlyList<int> LessonsWithoutOutcome { get; init; }

    /// <summary>The coverage of a unit.</summary>
    /// <param name="content">What is planned.</param>
    /// <param name="records">The lessons of the calendar it is tied to, any order; others are passed over. A lesson without one counts as planned only.</param>
    public static UnitCoverage Of(UnitContent content, IReadOnlyList<LessonRecord> records)
    {
        var byLesson = records.DistinctBy(r => r.Lesson.Id).ToDictionary(r => r.Lesson.Id, r => LessonReading.Of(r, 1).Sets.Where(s => s.Trials.Count > 0).ToList());
        List<SetEvidence> SetsOf(PlannedUnitLesson lesson, Guid outcomeId)
        {
            var tasks = TasksOf(lesson, outcomeId).ToHashSet();
            return lesson.LessonId is { } id && byLesson.TryGetValue(id, out var sets) ? [.. sets.Where(s => tasks.Contains(s.TaskId))] : [];
        }

        return new UnitCoverage
        {
            Outcomes = [.. content.Outcomes.Select(outcome =>
            {
                var sets = content.Lessons.Select(lesson => SetsOf(lesson, outcome.Id)).ToList();
                return new OutcomeCoverage(
                    outcome,
                    [.. content.Lessons.Zip(sets, (lesson, made) => new CoverageCell(
                        TasksOf(lesson, outcome.Id).Count(), made.Select(s => s.PupilId).Distinct().Count(), made.Sum(s => s.Trials.Count)))],
                    sets.SelectMany(s => s).Select(s => s.PupilId).Distinct().Count());
            })],
            LessonsWithoutOutcome = [.. content.Lessons.Select((lesson, i) => (lesson, Number: i + 1))
                .Where(x => !x.lesson.Tasks.Any(t => t.OutcomeIds.Intersect(content.Outcomes.Select(o => o.Id)).Any())).Select(x => x.Number)],
        };
    }

    private static IEnumerable<Guid> TasksOf(PlannedUnitLesson lesson, Guid outcomeId) => lesson.Tasks.Where(t => t.OutcomeIds.Contains(outcomeId)).Select(t => t.TaskId).Distinct();
}
