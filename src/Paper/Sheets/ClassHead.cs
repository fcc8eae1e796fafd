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
        _title = TextMeasure.Lines(record.Class.Name, frame.RoomMm * TitleFraction, TitlePt, TextWeight.Bold);
        var room = frame.RoomMm * (1 - TitleFraction) - 4;
        _lesson =
        [
            .. TextMeasure.Lines(words.Date(record.Lesson.Date), room, TypeScale.SmallPt),
            .. TextMeasure.Lines(record.Lesson.Title, room, TypeScale.SmallPt),
        ];
        HeightMm = AfterMm + Math.Max(
            _title.Count * TypeScale.LineMm(TitlePt),
            TypeScale.AscentMm(TitlePt) - TypeScale.AscentMm(TypeScale.SmallPt) + (_lesson.Count + (isPaged ? 1 : 0)) * TypeScale.LineMm(TypeScale.SmallPt));
    }

    public double HeightMm { get; }

    public void DrawOn(Sketch sketch, int page, int pageCount)
    {
        sketch.Paragraph(_frame.LeftMm, _frame.TopMm, _title, TitlePt, weight: TextWeight.Bold);
        var lift = TypeScale.AscentMm(TitlePt) - TypeScale.AscentMm(TypeScale.SmallPt);
        IReadOnlyList<string> lines = _isPaged ? [.. _lesson, _words.Of("PageOf", page, pageCount)] : _lesson;
        sketch.Paragraph(_frame.RightMm, _frame.TopMm + lift, lines, TypeScale.SmallPt, Tone.Muted, anchor: TextAnchor.End);
    }
}
