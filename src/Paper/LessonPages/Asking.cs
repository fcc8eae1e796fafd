using System.Globalization;
using Slantwise.Engines.Statistics;
using Slantwise.Paper.Words;
using Slantwise.Records.Evidence;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tasks;
using Slantwise.Records.Words;

namespace Slantwise.Paper.LessonPages;

/// <summary>Questions for talks and for the end of the lesson, from the program's one bank of questions, and what the class's last lesson showed.</summary>
internal sealed class Asking(LessonRecord record, LessonRecord? before, CultureInfo language, CardWords words, PaperWords paperWords)
{
    private readonly LessonEvidence? _last = before is null ? null : LessonEvidence.Of(before);

    /// <summary>Questions about the decision, the cues and causes, so many of each.</summary>
    public IEnumerable<(string Topic, string Question)> Questions(int perTopicCount)
    {
        (string Topic, string[] Questions)[] bank =
        [
            (words["TopicDecision"], [Bank("QuestionHarderAfterFew"), Bank("QuestionNoTalkYet")]),
            (words["TopicCue"], [Bank("QuestionChecksDiffer", OpenCueNumber), Bank("QuestionCueNeverTicked", OpenCueNumber)]),
            (words["TopicCause"], IsHeld ? [Bank("QuestionHoldsEndLate"), Bank("QuestionHoldsEndEarly")] : [Bank("QuestionHoldsEndEarly")]),
        ];
        return bank.SelectMany(b => b.Questions.Take(perTopicCount).Select(q => (b.Topic, q)));
    }

    /// <summary>Questions for the whole class at the end.</summary>
    public IEnumerable<string> Debrief() => new[] { "DebriefDecide", "DebriefChange", "DebriefStart" }.Select(key => Bank(key));

    /// <summary>What the last lesson with results showed of the class, without names; empty where there is none.</summary>
    public IEnumerable<string> Patterns()
    {
        if (_last is null) return [];
        List<string> patterns = [.. _last.Class.CuesMostOftenOpen.Take(2).Select(cue => words.Of("PatternCue", cue.Text, cue.UntickedSetCount, cue.CheckedSetCount))];
        if (_last.Class.DecisionsAfter.FirstOrDefault(d => d.Band == SuccessBand.Low) is { DecidedCount: > 0 } low)
            patterns.Add(words.Of("PatternDecisions", low.DecidedCount, low.EasierCount, low.SameCount, low.HarderCount));
        return patterns.Count == 0 ? [] : patterns.Prepend(words.Of("LastTime", paperWords.Date(_last.Date)));
    }

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
