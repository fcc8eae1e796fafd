using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Paper.Sheets;

/// <summary>The top of every page: whose it is on the left, when and where on the right.</summary>
internal sealed class SheetHeader
{
    private const double NameFraction = 0.56;
    private const double BlankNameMm = 72;
    private const double PadMm = 2.5;

    // As wide as a page's number gets: what has room for it has room for any.
    private const int WidestPage = 88;

    private readonly PageFrame _frame;
    private readonly PaperWords _words;
    private readonly Pupil? _pupil;
    private readonly bool _isPaged;
    private readonly IReadOnlyList<string> _name;
    private readonly string _code;
    private readonly IReadOnlyList<string> _lesson;
    private readonly double _lessonRoomMm;
    private readonly bool _isCodeBeside;

    public SheetHeader(LessonRecord record, Pupil? pupil, PageFrame frame, PaperWords words, bool isPaged)
    {
        (_frame, _words, _pupil, _isPaged) = (frame, words, pupil, isPaged);
        var nameRoom = frame.RoomMm * NameFraction;
        var label = pupil is null ? words["Name"] : Labels.Of(pupil);
        _name = TextMeasure.Lines(label, nameRoom, TypeScale.LeadPt, TextWeight.Bold);
        _code = pupil is null || label == pupil.Code ? "" : pupil.Code;
        _isCodeBeside = _name.Count == 1
            && TextMeasure.WidthMm(label, TypeScale.LeadPt, TextWeight.Bold) + CodeGapMm + TextMeasure.WidthMm(_code, TypeScale.SmallPt) <= nameRoom;
        _lessonRoomMm = frame.RoomMm * (1 - NameFraction) - 4;
        _lesson =
        [
            .. TextMeasure.Lines($"{record.Class.Name} · {words.Date(record.Lesson.Date)}", _lessonRoomMm, TypeScale.SmallPt),
            .. TextMeasure.Lines(record.Lesson.Title, _lessonRoomMm, TypeScale.SmallPt),
        ];
        var left = _name.Count * TypeScale.LineMm(TypeScale.LeadPt) + (_code.Length > 0 && !_isCodeBeside ? TypeScale.LineMm(TypeScale.SmallPt) : 0);
        var right = Lesson(WidestPage, WidestPage).Count * TypeScale.LineMm(TypeScale.SmallPt);
        HeightMm = Math.Max(left, right) + PadMm;
    }

    public double HeightMm { get; }

    private static double CodeGapMm => 3;

    // The page stands at the end of the last line if there is room, else on one of its own.
    private IReadOnlyList<string> Lesson(int page, int pageCount)
    {
        if (!_isPaged) return _lesson;
        var words = _words.Of("PageOf", page, pageCount);
        var joined = $"{_lesson[^1]} · {words}";
        var widest = $"{_lesson[^1]} · {_words.Of("PageOf", WidestPage, WidestPage)}";
        return TextMeasure.WidthMm(widest, TypeScale.SmallPt) <= _lessonRoomMm ? [.. _lesson.SkipLast(1), joined] : [.. _lesson, words];
    }

    public void DrawOn(Sketch sketch, int page, int pageCount)
    {
        sketch.Paragraph(_frame.LeftMm, _frame.TopMm, _name, TypeScale.LeadPt, weight: TextWeight.Bold);
        var baseline = _frame.TopMm + TypeScale.AscentMm(TypeScale.LeadPt);
        var right = _frame.LeftMm + TextMeasure.WidthMm(_name[0], TypeScale.LeadPt, TextWeight.Bold) + CodeGapMm;
        if (_pupil is null) sketch.Rule(right, right + BlankNameMm, baseline + 1, Tone.Muted, Sketch.EdgeMm);
        else if (_isCodeBeside) sketch.Words(right, baseline, _code, TypeScale.SmallPt, Tone.Muted);
        else sketch.Paragraph(_frame.LeftMm, _frame.TopMm + _name.Count * TypeScale.LineMm(TypeScale.LeadPt), [_code], TypeScale.SmallPt, Tone.Muted);

        var lines = Lesson(page, pageCount);
        // The first lines of both sides share a baseline.
        var lift = TypeScale.AscentMm(TypeScale.LeadPt) - TypeScale.AscentMm(TypeScale.SmallPt);
        sketch.Paragraph(_frame.RightMm, _frame.TopMm + lift, lines, TypeScale.SmallPt, Tone.Muted, anchor: TextAnchor.End);
        sketch.Rule(_frame.LeftMm, _frame.RightMm, _frame.TopMm + HeightMm + 1);
    }
}
