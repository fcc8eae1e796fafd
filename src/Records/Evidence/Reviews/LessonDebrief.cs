using System.Globalization;
using Slantwise.Records.Evidence.Levels;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Words;

namespace Slantwise.Records.Evidence.Reviews;

/// <summary>Questions for the whole class at the end of a lesson: from what the same tasks showed last time, and open ones where that is not enough.</summary>
public sealed record LessonDebrief
{
    private const int MostItemCount = 3;
    private const string AboutDecisions = "DebriefDecide";
    private static readonly string[] OpenKeys = [AboutDecisions, "DebriefChange", "DebriefStart"];

    /// <summary>The day of the lesson it looks back to; none where the class has none with these tasks.</summary>
    public DateOnly? LastDay { get; init; }

    /// <summary>What that lesson showed, with a question each; at most three, none named by a pupil.</summary>
    public required IReadOnlyList<ReviewItem> Items { get; init; }

    /// <summary>The open questions that fill it up, by their names in the question words.</summary>
    public required IReadOnlyList<string> OpenQuestionKeys { get; init; }

    /// <summary>Whether there was a lesson with these tasks and too little in it to ask about.</summary>
    public bool HasTooLittle => LastDay is not null && Items.Count == 0;

    /// <summary>The questions of a lesson.</summary>
    /// <param name="content">What is worked on in it.</param>
    /// <param name="before">The class's last lesson with results; none where there is none.</param>
    public static LessonDebrief Of(SheetContent content, LessonRecord? before)
    {
        var items = before is not { Sheet: { } sheet } || !SharesTask(content, sheet.Content) ? null : ItemsOf(content, before);
        return new LessonDebrief
        {
            LastDay = items is null ? null : before!.Lesson.Date,
            Items = items ?? [],
            OpenQuestionKeys = [.. OpenKeys.Where(k => k != AboutDecisions || items?.Any(i => i.Kind == ReviewKind.Decisions) != true).Take(MostItemCount - (items?.Count ?? 0))],
        };
    }

    /// <summary>An open question as a sentence.</summary>
    /// <param name="key">Its name.</param>
    /// <param name="culture">The reader's language.</param>
    /// <exception cref="InvalidOperationException">The key has no sentence.</exception>
    public static string OpenQuestion(string key, CultureInfo culture) => QuestionWords.Text(key, culture);

    /// <summary>Whether two sheets have a task in common.</summary>
    internal static bool SharesTask(SheetContent content, SheetContent before) => before.Tasks.Any(t => content.Tasks.Any(now => now.TaskId == t.TaskId));

    private static List<ReviewItem> ItemsOf(SheetContent content, LessonRecord before)
    {
        var evidence = LessonEvidence.Of(before);
        var ids = content.Tasks.Select(t => t.TaskId).ToHashSet();
        var tasks = evidence.Tasks.Where(t => ids.Contains(t.TaskId)).ToList();
        var sets = evidence.Pupils.SelectMany(p => p.Tasks).Where(t => ids.Contains(t.TaskId)).SelectMany(t => t.Sets).ToList();
        var offers = LevelOffers.Of([before], before.Lesson.Date);
        // One of each kind first: three cues would be one question three times.
        List<List<ReviewItem>> kinds =
        [
            [.. tasks.SelectMany(t => ReviewRules.Cues(t, evidence.Pupils))],
            [.. ReviewRules.Decisions(sets)],
            [.. ReviewRules.Predictions(sets)],
            [.. tasks.SelectMany(t => ReviewRules.Levels(t, id => offers.IsOfferedToAnybody(id)))],
        ];
        return [.. kinds.SelectMany(k => k.Select((item, i) => (item, i))).OrderBy(x => x.i).ThenBy(x => x.item.Kind).Select(x => x.item).Take(MostItemCount)];
    }
}
