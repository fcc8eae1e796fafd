using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.Sheets;

/// <summary>The top of the class list: the class, large; the day and the lesson on the right.</summary>
internal sealed class ClassHead
{
    private const double TitlePt = 20;
    private const double TitleFraction = 0.5;
    private const double AfterMm = 4;

    private readonly PageFrame _frame;
    private readonly PaperWords _words;
    private readonly bool _isPaged;
    private readonly IReadOnlyList<string> _title;
    private readonly IReadOnlyList<string> _lesson;

    public ClassHead(LessonRecord record, PageFrame frame, PaperWords words, bool isPaged)
    {
        (_frame, _words, _isPaged) = (frame, words, isPaged);
        _title = _frame.Type.Lines(record.Class.Name, frame.RoomMm * TitleFraction, TitlePt, TextWeight.Bold);
        var room = frame.RoomMm * (1 - TitleFraction) - 4;
        _lesson =
        [
            .. _frame.Type.Lines(words.Date(record.Lesson.Date), room, _frame.Type.SmallPt),
            .. _frame.Type.Lines(record.Lesson.Title, room, _frame.Type.SmallPt),
        ];
        HeightMm = AfterMm + Math.Max(
            _title.Count * _frame.Type.LineMm(TitlePt),
            TypeScale.AscentMm(TitlePt) - TypeScale.AscentMm(_frame.Type.SmallPt) + (_lesson.Count + (isPaged ? 1 : 0)) * _frame.Type.LineMm(_frame.Type.SmallPt));
    }

    public double HeightMm { get; }

    public void DrawOn(Sketch sketch, int page, int pageCount)
    {
        sketch.Paragraph(_frame.LeftMm, _frame.TopMm, _title, TitlePt, weight: TextWeight.Bold);
        var lift = TypeScale.AscentMm(TitlePt) - TypeScale.AscentMm(_frame.Type.SmallPt);
        IReadOnlyList<string> lines = _isPaged ? [.. _lesson, _words.Of("PageOf", page, pageCount)] : _lesson;
        sketch.Paragraph(_frame.RightMm, _frame.TopMm + lift, lines, _frame.Type.SmallPt, Tone.Muted, anchor: TextAnchor.End);
    }
}
