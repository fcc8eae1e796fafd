using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;

namespace Slantwise.Paper.Sheets;

/// <summary>The top of every page: whose it is on the left, when and where on the right; under one another where type is large.</summary>
internal sealed class SheetHeader
{
    private const double NameFraction = 0.56;
    private const double BlankNameMm = 72;
    private const double PadMm = 2.5;
    private const double CodeGapMm = 3;

    // As wide as a page's number gets: what has room for it has room for any.
    private const int WidestPage = 88;

    private readonly PageFrame _frame;
    private readonly PaperWords _words;
    private readonly Pupil? _pupil;
    private readonly bool _isPaged;
    private readonly bool _isStacked;
    private readonly double _nameMm;
    private readonly IReadOnlyList<string> _name;
    private readonly string _code;
    private readonly IReadOnlyList<string> _lesson;
    private readonly double _lessonRoomMm;
    private readonly bool _isCodeBeside;

    public SheetHeader(LessonRecord record, Pupil? pupil, int spareNumber, SheetStyle style, bool isPaged)
    {
        var (frame, words) = (style.Frame, style.Words);
        (_frame, _words, _pupil, _isPaged, _isStacked) = (frame, words, pupil, isPaged, style.IsStacked);
        var nameRoom = NameRoomMm;
        var label = pupil is null ? words["Name"] : Labels.Of(pupil);
        _name = _frame.Type.Lines(label, nameRoom, _frame.Type.LeadPt, TextWeight.Bold);
        _code = pupil is null ? words.Of("SpareNumber", spareNumber) : label == pupil.Code ? "" : pupil.Code;
        _isCodeBeside = _name.Count == 1
            && _frame.Type.WidthMm(label, _frame.Type.LeadPt, TextWeight.Bold) + CodeGapMm + _frame.Type.WidthMm(_code, _frame.Type.SmallPt) <= nameRoom;
        _lessonRoomMm = _isStacked ? frame.RoomMm : frame.RoomMm * (1 - NameFraction) - 4;
        _lesson =
        [
            .. _frame.Type.Lines($"{record.Class.Name} · {words.Date(record.Lesson.Date)}", _lessonRoomMm, _frame.Type.SmallPt),
            .. _frame.Type.Lines(record.Lesson.Title, _lessonRoomMm, _frame.Type.SmallPt),
        ];
        var left = _name.Count * _frame.Type.LineMm(_frame.Type.LeadPt) + (_code.Length > 0 && !_isCodeBeside ? _frame.Type.LineMm(_frame.Type.SmallPt) : 0);
        var right = Lesson(WidestPage, WidestPage).Count * _frame.Type.LineMm(_frame.Type.SmallPt);
        _nameMm = left;
        HeightMm = (_isStacked ? left + right : Math.Max(left, right)) + PadMm;
    }

    public double HeightMm { get; }

    private double NameRoomMm => _frame.RoomMm * (_isStacked ? 1 : NameFraction);

    // The page stands at the end of the last line if there is room, else on one of its own.
    private IReadOnlyList<string> Lesson(int page, int pageCount)
    {
        if (!_isPaged) return _lesson;
        var words = _words.Of("PageOf", page, pageCount);
        var joined = $"{_lesson[^1]} · {words}";
        var widest = $"{_lesson[^1]} · {_words.Of("PageOf", WidestPage, WidestPage)}";
        return _frame.Type.WidthMm(widest, _frame.Type.SmallPt) <= _lessonRoomMm ? [.. _lesson.SkipLast(1), joined] : [.. _lesson, words];
    }

    public void DrawOn(Sketch sketch, int page, int pageCount)
    {
        sketch.Paragraph(_frame.LeftMm, _frame.TopMm, _name, _frame.Type.LeadPt, weight: TextWeight.Bold);
        var baseline = _frame.TopMm + TypeScale.AscentMm(_frame.Type.LeadPt);
        var right = _frame.LeftMm + _frame.Type.WidthMm(_name[0], _frame.Type.LeadPt, TextWeight.Bold) + CodeGapMm;
        if (_pupil is null) BlankName(sketch, right, baseline);
        else if (_isCodeBeside) sketch.Words(right, baseline, _code, _frame.Type.SmallPt, Tone.Muted);
        else sketch.Paragraph(_frame.LeftMm, _frame.TopMm + _name.Count * _frame.Type.LineMm(_frame.Type.LeadPt), [_code], _frame.Type.SmallPt, Tone.Muted);

        var lines = Lesson(page, pageCount);
        // The first lines of both sides share a baseline.
        var lift = TypeScale.AscentMm(_frame.Type.LeadPt) - TypeScale.AscentMm(_frame.Type.SmallPt);
        if (_isStacked) sketch.Paragraph(_frame.LeftMm, _frame.TopMm + _nameMm, lines, _frame.Type.SmallPt, Tone.Muted);
        else sketch.Paragraph(_frame.RightMm, _frame.TopMm + lift, lines, _frame.Type.SmallPt, Tone.Muted, anchor: TextAnchor.End);
        sketch.Rule(_frame.LeftMm, _frame.RightMm, _frame.TopMm + HeightMm + 1);
    }

    // The number tells pages of one sheet from those of another until there is a name.
    private void BlankName(Sketch sketch, double left, double baseline)
    {
        var number = _frame.Type.WidthMm(_code, _frame.Type.SmallPt) + CodeGapMm;
        var width = Math.Min(BlankNameMm, _frame.LeftMm + NameRoomMm - left - number);
        sketch.Rule(left, left + width, baseline + 1, Tone.Muted, Sketch.EdgeMm);
        sketch.Writing(new SheetField(SheetFieldKind.Name), left, _frame.TopMm, width, baseline + 2 - _frame.TopMm);
        sketch.Words(left + width + CodeGapMm, baseline, _code, _frame.Type.SmallPt, Tone.Muted);
    }
}
