using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Planning;

namespace Slantwise.Paper.LessonPages;

/// <summary>Time and mats in three lines, as the lesson keeps them.</summary>
internal sealed class PlanLines
{
    private readonly PageFrame _frame;
    private readonly PageColumns _columns;
    private readonly CardWords _words;
    private readonly IReadOnlyList<string> _lines;

    public PlanLines(LessonRecord record, PageFrame frame, PaperOptions options, CardWords words)
    {
        (_frame, _columns, _words) = (frame, new(frame), words);
        // Without minutes and mats of its own a lesson has no answer worth printing.
        _lines = record.Lesson is { Phases.Count: > 0, MatCount: > 0 } && LessonPlanning.ProblemOf(record) is null
            ? PlanningBrief.Of(LessonPlanning.Of(record, record.Sheet?.Content, record.Lesson.Practice is { IsWithin: true } kept ? kept : PlanningChoice.Usual), options.Language).Lines
            : [];
    }

    public IEnumerable<Block> Blocks(LessonDetail detail)
    {
        if (_lines.Count == 0 || !detail.HasPlan) yield break;
        yield return _columns.Block(2.5, (_frame.LeftMm, [_columns.Heading(_words["PlanHead"]), .. _lines.SelectMany(l => _columns.Lines(l, _frame.RoomMm, "–"))]));
    }
}
