using Slantwise.Engines.Drawing;
using Slantwise.Paper.Forms;
using Slantwise.Paper.Layout;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;

namespace Slantwise.Paper.Sheets;

/// <summary>A row a pupil: the set that was watched, and for each cue whether it was seen.</summary>
internal sealed class ObservationRows
{
    private const double NameMm = 42;
    private const double GutterMm = 3;
    private const double MostBetweenMm = 8;
    private const double PadMm = 0.9;
    private const double StretchMm = 3;
    private const double NumberPadMm = 1.2;

    private readonly SheetStyle _style;
    private readonly int _task;
    private readonly int _cueCount;
    private readonly int _setCount;
    private readonly double _betweenMm;

    public ObservationRows(SheetStyle style, int task, int cueCount, int setCount)
    {
        (_style, _task, _cueCount, _setCount) = (style, task, cueCount, setCount);
        var room = RightMm - CuesLeftMm - cueCount * PairMm;
        _betweenMm = cueCount < 2 ? 0 : Math.Min(MostBetweenMm, room / (cueCount - 1));
    }

    // The rows end before the code, so that they may go down beside it.
    private double RightMm => _style.Frame.RightMm - FormFrame.CodeRoomMm(_style.Frame);

    private double SetsLeftMm => _style.Frame.LeftMm + NameMm;

    private double SetsMm => _setCount < 2 ? 0 : _setCount * _style.PitchMm - _style.FieldGapMm + 2 * GutterMm;

    private double CuesLeftMm => SetsLeftMm + SetsMm;

    private double PairMm => _style.FieldMm * 2 + _style.FieldGapMm;

    public IEnumerable<Block> Blocks(IReadOnlyList<Pupil> rows)
    {
        var head = Head();
        return rows.Select((pupil, i) => Row(pupil, i + 1) with { Head = head });
    }

    private double CueLeftMm(int cue) => CuesLeftMm + (cue - 1) * (PairMm + _betweenMm);

    private Block Head()
    {
        var (type, words, frame) = (_style.Type, _style.Words, _style.Frame);
        var line = type.LineMm(type.SmallPt);
        var sign = Signs.SizeMm(type.SmallPt);
        return new Block(2 * line + NumberPadMm, (sketch, top, height) =>
        {
            var (first, second) = (top + TypeScale.AscentMm(type.SmallPt), top + line + TypeScale.AscentMm(type.SmallPt));
            sketch.Words(frame.LeftMm, second, words["Pupil"], type.SmallPt, weight: TextWeight.Bold);
            if (_setCount > 1)
            {
                sketch.Words(SetsLeftMm, first, words["Set"], type.SmallPt, weight: TextWeight.Bold);
                for (var set = 0; set < _setCount; set++)
                    sketch.Words(SetsLeftMm + set * _style.PitchMm + _style.FieldMm / 2, second, $"{set + 1}", type.SmallPt, Tone.Muted, anchor: TextAnchor.Middle);
            }
            for (var cue = 1; cue <= _cueCount; cue++)
            {
                var left = CueLeftMm(cue);
                sketch.Words(left + PairMm / 2, first, $"{cue}", type.SmallPt, Tone.Accent, TextWeight.Bold, TextAnchor.Middle);
                var middle = second - TypeScale.HalfCapitalMm(type.SmallPt);
                Signs.Draw(sketch, Sign.Tick, left + (_style.FieldMm - sign) / 2, middle, sign);
                Signs.Draw(sketch, Sign.Ring, left + _style.PitchMm + (_style.FieldMm - sign) / 2, middle, sign);
            }
            sketch.Rule(frame.LeftMm, RightMm, top + height, Tone.Ink, Sketch.EdgeMm);
        })
        { GapMm = 3, StaysWithNext = true };
    }

    private Block Row(Pupil pupil, int row)
    {
        var (type, frame) = (_style.Type, _style.Frame);
        var name = type.Lines(Labels.Of(pupil), NameMm - GutterMm, type.SmallPt);
        var least = Math.Max(_style.FieldMm, name.Count * type.LineMm(type.SmallPt)) + 2 * PadMm;
        return new Block(least, (sketch, top, height) =>
        {
            var field = top + (height - _style.FieldMm) / 2;
            sketch.Paragraph(frame.LeftMm, top + (height - name.Count * type.LineMm(type.SmallPt)) / 2, name, type.SmallPt);
            for (var set = 1; _setCount > 1 && set <= _setCount; set++)
                sketch.Mark(new SheetField(SheetFieldKind.TeacherSet, _task, row, set), SetsLeftMm + (set - 1) * _style.PitchMm, field, _style.FieldMm, isRound: true);
            for (var cue = 1; cue <= _cueCount; cue++)
            {
                sketch.Mark(new SheetField(SheetFieldKind.TeacherMet, _task, row, cue), CueLeftMm(cue), field, _style.FieldMm, isRound: false);
                sketch.Mark(new SheetField(SheetFieldKind.TeacherNotMet, _task, row, cue), CueLeftMm(cue) + _style.PitchMm, field, _style.FieldMm, isRound: false);
            }
            // Under the name alone: a line close to fields looks like a part of a ring around them.
            sketch.Rule(frame.LeftMm, (_setCount > 1 ? SetsLeftMm : CueLeftMm(1)) - GutterMm, top + height);
        })
        { StretchMm = StretchMm, IsRow = true };
    }
}
