using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Levels;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Units.Revisits;

/// <summary>What the entries of a unit's lessons say may be worth coming back to: questions to whoever plans, none of them an order.</summary>
public sealed record UnitRevisit
{
    /// <summary>The lessons of the unit with a try in them.</summary>
    public required int TriedLessonCount { get; init; }

    /// <summary>The questions: outcomes first, then task by task, then the class.</summary>
    public required IReadOnlyList<ReviewItem> Items { get; init; }

    /// <summary>What may be revisited.</summary>
    /// <param name="content">What is planned.</param>
    /// <param name="records">Lessons of the class, any order; only those the unit is tied to are looked at.</param>
    /// <param name="taskName">The name of a task.</param>
    public static UnitRevisit Of(UnitContent content, IReadOnlyList<LessonRecord> records, Func<Guid, string> taskName)
    {
        var tied = content.Lessons.Select(l => l.LessonId).OfType<Guid>().ToHashSet();
        List<LessonRecord> lessons = [.. records.Where(r => tied.Contains(r.Lesson.Id) && r.Sheet is not null)];
        var unit = UnitEvidence.Of(lessons);
        var sets = unit.Pupils.SelectMany(p => p.Tasks).SelectMany(t => t.Sets).ToList();
        var tried = sets.Where(s => s.Trials.Count > 0).ToList();
        var triedLessons = tried.Select(s => s.LessonId).ToHashSet();
        var offers = LevelOffers.Of(lessons, lessons.Select(l => l.Lesson.Date).DefaultIfEmpty().Max());
        return new UnitRevisit
        {
            TriedLessonCount = triedLessons.Count,
            Items =
            [
                .. OutcomesUntried(content, tried, triedLessons),
                .. TooFew(content, unit, tried, triedLessons, taskName),
                .. unit.Tasks.SelectMany(t => ReviewRules.Cues(t, unit.Pupils).Concat(ReviewRules.Levels(t, id => offers.IsOfferedToAnybody(id))))
                    .Concat(ReviewRules.Decisions(sets)).Concat(ReviewRules.Predictions(sets)).Select(ToPlanner),
            ],
        };
    }

    // The same reason, and a question to whoever plans in place of that to the class.
    private static ReviewItem ToPlanner(ReviewItem item) => item with { QuestionKey = item.QuestionKey.Replace("Ask", "Plan", StringComparison.Ordinal) };

    // Only of lessons that took place: what is still to come is a plan, not a gap.
    private static IEnumerable<ReviewItem> OutcomesUntried(UnitContent content, List<SetEvidence> tried, HashSet<Guid> triedLessons) =>
        from outcome in content.Outcomes
        let taught = content.Lessons.Where(l => l.LessonId is { } id && triedLessons.Contains(id))
            .SelectMany(l => l.Tasks.Where(t => t.OutcomeIds.Contains(outcome.Id)).Select(t => (Lesson: l.LessonId!.Value, t.TaskId))).ToList()
        where taught.Count > 0 && !tried.Any(s => taught.Contains((s.LessonId, s.TaskId)))
        select new ReviewItem(
            ReviewKind.Outcome, "OutcomeUntried", [Named(outcome), taught.Select(t => t.Lesson).Distinct().Count(), taught.Select(t => t.TaskId).Distinct().Count()], "OutcomeUntriedAsk", []);

    private static IEnumerable<ReviewItem> TooFew(
        UnitContent content, UnitEvidence unit, List<SetEvidence> tried, HashSet<Guid> triedLessons, Func<Guid, string> taskName) =>
        from taskId in content.Lessons.Where(l => l.LessonId is { } id && triedLessons.Contains(id)).SelectMany(l => l.Tasks).Select(t => t.TaskId).Distinct()
        let made = tried.Where(s => s.TaskId == taskId).ToList()
        let pupils = made.Select(s => s.PupilId).Distinct().Count()
        where pupils < OpenCue.EnoughPupilCount
        select new ReviewItem(
            ReviewKind.NotEnough, "NotEnough", [unit.Tasks.FirstOrDefault(t => t.TaskId == taskId)?.Name ?? taskName(taskId), made.Sum(s => s.Trials.Count), pupils], "NotEnoughAsk", [])
        { TaskId = taskId };

    private static string Named(Outcome outcome) => outcome.Code.Length > 0 ? outcome.Code : outcome.Text;
}
