using System.Globalization;
using Slantwise.Paper.Words;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Reviews;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Words;

namespace Slantwise.Paper.LessonPages;

/// <summary>Questions for talks and for the end of the lesson: from the tasks' designs, the program's one bank of questions, and what the class's last lesson showed.</summary>
internal sealed class Asking(LessonRecord record, LessonPlans plans, CultureInfo language, CardWords words)
{
    private readonly LessonEvidence? _last = plans.Before is { } before ? LessonEvidence.Of(before) : null;

    /// <summary>Questions about the decision, the cues and causes, so many of each.</summary>
    public IEnumerable<(string Topic, string Question)> Questions(int perTopicCount)
    {
        (string Topic, string[] Questions)[] bank =
        [
            (words["TopicDecision"], [Bank("QuestionHarderAfterFew"), Bank("QuestionNoTalkYet")]),
            (words["TopicCue"], [Bank("QuestionChecksDiffer", OpenCueNumber), Bank("QuestionCueNeverTicked", OpenCueNumber)]),
            (words["TopicCause"], IsHeld ? [Bank("QuestionHoldsEndLate"), Bank("QuestionHoldsEndEarly")] : [Bank("QuestionHoldsEndEarly")]),
        ];
        // Where every task has its own questions about causes, they stand with the task.
        return (record.Sheet!.Content.Tasks.All(t => Errors(t).Count > 0) ? bank.SkipLast(1) : bank).SelectMany(b => b.Questions.Take(perTopicCount).Select(q => (b.Topic, q)));
    }

    /// <summary>The questions for the whole class at the end: what the last lesson with these tasks showed, and open ones.</summary>
    public LessonDebrief Debrief { get; } = LessonDebrief.Of(record.Sheet!.Content, plans.Before);

    /// <summary>What often goes another way in a task, and what to ask then; empty for a task without a design.</summary>
    public IReadOnlyList<MovementError> Errors(SheetTask task) => plans.WordsOf(task.TaskId, language)?.Errors ?? [];

    /// <summary>The open questions for the end: those that fill it up, or all where nothing is said of last time.</summary>
    public IEnumerable<string> OpenQuestions(bool hasPatterns) => (hasPatterns ? Debrief : LessonDebrief.Of(record.Sheet!.Content, null)).OpenQuestionKeys.Select(key => Bank(key));

    // The cue most often left open last time, where it is still on the sheet; else the first.
    private int OpenCueNumber
    {
        get
        {
            var texts = record.Sheet!.Content.Tasks.SelectMany(t => t.Cues.Select((cue, i) => (cue, Number: i + 1))).ToList();
            var open = _last?.Class.CuesMostOftenOpen.Select(c => texts.FirstOrDefault(t => t.cue == c.Text).Number).FirstOrDefault(n => n > 0) ?? 0;
            return open > 0 ? open : 1;
        }
    }

    private bool IsHeld => record.Sheet!.Content.Tasks.Any(t => t.Levels.Any(l => l.Dose.Kind == DoseKind.HoldS));

    private string Bank(string key, params object[] arguments) => QuestionWords.Sentence(key, language, arguments);
}
