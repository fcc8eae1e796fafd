using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Paper.LessonPages;

/// <summary>A task on the lesson page: name, purpose, caution, then levels on the left and cues on the right.</summary>
internal sealed class TaskBrief(SheetTask task, int number, LessonRecord record, PageFrame frame, PaperWords words, IReadOnlyList<MovementError> errors)
{
    private const double LevelsFraction = 0.54;

    private readonly PageColumns _columns = new(frame);

    public IEnumerable<Block> Blocks(LessonDetail detail)
    {
        var title = record.Sheet!.Content.Tasks.Count == 1 ? task.Name : words.Of("TaskTitled", number, task.Name);
        List<PageLine> head = [.. _columns.Lines(title, frame.RoomMm, isBold: true)];
        if (detail.MostPurposeCount > 0) head.AddRange(_columns.Lines(task.Purpose, frame.RoomMm, mostCount: detail.MostPurposeCount));
        head.AddRange(_columns.Lines(task.Caution, frame.RoomMm, "!", isBold: true, tone: Tone.Caution));
        yield return _columns.Block(2.5, (frame.LeftMm, head)) with { StaysWithNext = true };

        var levelsMm = (frame.RoomMm - PageColumns.GutterMm) * LevelsFraction;
        var cuesLeft = frame.LeftMm + levelsMm + PageColumns.GutterMm;
        if (!detail.HasLevels) yield break;
        var levels = OfferedLevel.Of(task, record, null)
            .SelectMany((l, i) => _columns.Lines(l.Level.Name, levelsMm, $"{i + 1}", detail.MostLineCount, ending: $", {words.Dose(l.Level.Dose)}")).ToList();
        var cues = task.Cues.SelectMany((cue, i) => _columns.Lines(cue, frame.RightMm - cuesLeft, $"{i + 1}", detail.MostLineCount)).ToList();
        List<(double, IReadOnlyList<PageLine>)> columns = [];
        if (levels.Count > 0) columns.Add((frame.LeftMm, [new PageLine(words["Levels"]) { Tone = Tone.Muted }, .. levels]));
        if (cues.Count > 0) columns.Add((cuesLeft, [new PageLine(words["Cues"]) { Tone = Tone.Muted }, .. cues]));
        if (columns.Count > 0) yield return _columns.Block(0.3, [.. columns]);
        foreach (var block in ErrorBlocks(detail, levelsMm, cuesLeft)) yield return block;
    }

    // What is seen on the left, the question on the right, beside each other: neither cut, nor parted by the end of a page.
    private IEnumerable<Block> ErrorBlocks(LessonDetail detail, double leftMm, double rightFrom)
    {
        var shown = errors.Take(detail.MostErrorCount).ToList();
        for (var i = 0; i < shown.Count; i++)
        {
            List<PageLine> seen = [.. _columns.Lines(shown[i].Seen, leftMm, "–")];
            List<PageLine> ask = [.. _columns.Lines(shown[i].Question, frame.RightMm - rightFrom)];
            if (i == 0)
            {
                seen.Insert(0, new PageLine(words["YouSee"]) { Tone = Tone.Muted });
                ask.Insert(0, new PageLine(words["YouAsk"]) { Tone = Tone.Muted });
            }
            yield return _columns.Block(i == 0 ? 1 : 0.3, (frame.LeftMm, seen), (rightFrom, ask));
        }
    }
}
