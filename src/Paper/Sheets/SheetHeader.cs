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

    private readonly PageFrame _frame;
    private readonly PaperWords _words;
    private readonly Pupil? _pupil;
    private readonly bool _isPaged;
    private readonly IReadOnlyList<string> _name;
    private readonly string _code;
    private readonly IReadOnlyList<string> _lesson;
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
        var lessonRoom = frame.RoomMm * (1 - NameFraction) - 4;
        _lesson =
        [
            .. TextMeasure.Lines($"{record.Class.Name} · {words.Date(record.Lesson.Date)}", lessonRoom, TypeScale.SmallPt),
            .. TextMeasure.Lines(record.Lesson.Title, lessonRoom, TypeScale.SmallPt),
        ];
        var left = _name.Count * TypeScale.LineMm(TypeScale.LeadPt) + (_code.Length > 0 && !_isCodeBeside ? TypeScale.LineMm(TypeScale.SmallPt) : 0);
        var right = (_lesson.Count + (isPaged ? 1 : 0)) * TypeScale.LineMm(TypeScale.SmallPt);
        HeightMm = Math.Max(left, right) + PadMm;
    }

    public double HeightMm { get; }

    private static double CodeGapMm => 3;

    public void DrawOn(Sketch sketch, int page, int pageCount)
    {
        sketch.Paragraph(_frame.LeftMm, _frame.TopMm, _name, TypeScale.LeadPt, weight: TextWeight.Bold);
        var baseline = _frame.TopMm + TypeScale.AscentMm(TypeScale.LeadPt);
        var right = _frame.LeftMm + TextMeasure.WidthMm(_name[0], TypeScale.LeadPt, TextWeight.Bold) + CodeGapMm;
        if (_pupil is null) sketch.Rule(right, right + BlankNameMm, baseline + 1, Tone.Muted, Sketch.EdgeMm);
        else if (_isCodeBeside) sketch.Words(right, baseline, _code, TypeScale.SmallPt, Tone.Muted);
        else sketch.Paragraph(_frame.LeftMm, _frame.TopMm + _name.Count * TypeScale.LineMm(TypeScale.LeadPt), [_code], TypeScale.SmallPt, Tone.Muted);

        IReadOnlyList<string> lines = _isPaged ? [.. _lesson, _words.Of("PageOf", page, pageCount)] : _lesson;
        // The first lines of both sides share a baseline.
        var lift = TypeScale.AscentMm(TypeScale.LeadPt) - TypeScale.AscentMm(TypeScale.SmallPt);
        sketch.Paragraph(_frame.RightMm, _frame.TopMm + lift, lines, TypeScale.SmallPt, Tone.Muted, anchor: TextAnchor.End);
        sketch.Rule(_frame.LeftMm, _frame.RightMm, _frame.TopMm + HeightMm + 1);
    }
}
