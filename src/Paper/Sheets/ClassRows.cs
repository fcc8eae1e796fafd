using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>A row a pupil: a box for the level chosen in each set, one to tick after a visit, and room to write.</summary>
internal sealed class ClassRows
{
    private const double NameMm = 46;
    private const double LeastBoxMm = 5.6;
    private const double MostBoxMm = 10;
    private const double BoxHighMm = 5.2;
    private const double TaskGapMm = 2.5;
    private const double GutterMm = 3;
    private const double LeastNotesMm = 18;
    private const double PadMm = 0.55;
    private const double StretchMm = 2;

    private readonly LessonRecord _record;
    private readonly SheetContent _content;
    private readonly PageFrame _frame;
    private readonly PaperWords _words;
    private readonly IReadOnlyList<IReadOnlyList<OfferedLevel>> _class;
    private readonly double _offeredMm;
    private readonly double _visitedMm;
    private readonly double _boxMm;

    public ClassRows(LessonRecord record, SheetContent content, PageFrame frame, PaperWords words)
    {
        (_record, _content, _frame, _words) = (record, content, frame, words);
        _class = [.. content.Tasks.Select(task => OfferedLevel.Of(task, record, null))];
        var offered = record.Pupils.SelectMany(Offered).ToList();
        _offeredMm = offered.Count == 0 ? 0 : GutterMm + offered.Append(words["Offered"]).Max(o => _frame.Type.WidthMm(o, _frame.Type.SmallPt, TextWeight.Bold));
        _visitedMm = _frame.Type.WidthMm(words["Visited"], _frame.Type.SmallPt, TextWeight.Bold);
        var room = frame.RoomMm - NameMm - _offeredMm - (content.Tasks.Count - 1) * TaskGapMm - _visitedMm - 2 * GutterMm - LeastNotesMm;
        _boxMm = Math.Clamp(room / (content.Tasks.Count * content.SetCount), LeastBoxMm, MostBoxMm);
    }

    private double SetsLeftMm => _frame.LeftMm + NameMm + _offeredMm;

    private double TaskMm => _content.SetCount * _boxMm;

    private double VisitedLeftMm => SetsLeftMm + _content.Tasks.Count * (TaskMm + TaskGapMm) - TaskGapMm + GutterMm;

    private double NotesLeftMm => VisitedLeftMm + _visitedMm + GutterMm;

    public IEnumerable<Block> Blocks(IEnumerable<Pupil> pupils)
    {
        var hint = _offeredMm > 0 ? $"{_words["ClassHint"]} {_words["OwnNumbersHint"]}" : _words["ClassHint"];
        foreach (var line in _frame.Type.Lines(hint, _frame.RoomMm, _frame.Type.SmallPt))
        {
            yield return new Block(
                _frame.Type.LineMm(_frame.Type.SmallPt),
                (sketch, top, _) => sketch.Paragraph(_frame.LeftMm, top, [line], _frame.Type.SmallPt, Tone.Muted))
            { StaysWithNext = true };
        }
        var head = Head();
        foreach (var pupil in pupils) yield return Row(pupil) with { Head = head };
    }

    private Block Head()
    {
        var line = _frame.Type.LineMm(_frame.Type.SmallPt);
        return new Block(2 * line + 1, (sketch, top, height) =>
        {
            var baseline = top + line + TypeScale.AscentMm(_frame.Type.SmallPt);
            void Bold(double x, string word) => sketch.Words(x, baseline, word, _frame.Type.SmallPt, weight: TextWeight.Bold);
            Bold(_frame.LeftMm, _words["Pupil"]);
            if (_offeredMm > 0) Bold(_frame.LeftMm + NameMm, _words["Offered"]);
            for (var task = 0; task < _content.Tasks.Count; task++)
            {
                var left = SetsLeftMm + task * (TaskMm + TaskGapMm);
                var over = _content.Tasks.Count == 1 ? _words["Sets"] : _words.Of("TaskNumber", task + 1);
                // With a single set the column is narrower than the word: its number says enough.
                if (_frame.Type.WidthMm(over, _frame.Type.SmallPt, TextWeight.Bold) <= TaskMm + TaskGapMm - 1)
                    sketch.Words(left, top + TypeScale.AscentMm(_frame.Type.SmallPt), over, _frame.Type.SmallPt, weight: TextWeight.Bold);
                for (var set = 0; set < _content.SetCount; set++)
                    sketch.Words(left + (set + 0.5) * _boxMm, baseline, $"{set + 1}", _frame.Type.SmallPt, Tone.Muted, anchor: TextAnchor.Middle);
            }
            Bold(VisitedLeftMm, _words["Visited"]);
            Bold(NotesLeftMm, _words["Notes"]);
            sketch.Rule(_frame.LeftMm, _frame.RightMm, top + height, Tone.Ink, Sketch.EdgeMm);
        })
        { GapMm = 2, StaysWithNext = true };
    }

    private Block Row(Pupil pupil)
    {
        var name = _frame.Type.Lines(Labels.Of(pupil), NameMm - GutterMm, _frame.Type.SmallPt);
        var offered = Offered(pupil).ToList();
        var line = _frame.Type.LineMm(_frame.Type.SmallPt);
        var least = Math.Max(BoxHighMm, Math.Max(name.Count, offered.Count) * line) + 2 * PadMm;
        return new Block(least, (sketch, top, height) =>
        {
            // The first lines and the boxes share a middle.
            var middle = top + PadMm + (height - least) / 2 + BoxHighMm / 2;
            var textTop = middle + TypeScale.HalfCapitalMm(_frame.Type.SmallPt) - TypeScale.AscentMm(_frame.Type.SmallPt);
            sketch.Paragraph(_frame.LeftMm, textTop, name, _frame.Type.SmallPt);
            sketch.Paragraph(_frame.LeftMm + NameMm, textTop, offered, _frame.Type.SmallPt, Tone.Muted);
            for (var task = 0; task < _content.Tasks.Count; task++)
            {
                for (var set = 0; set < _content.SetCount; set++)
                    sketch.Field(SetsLeftMm + task * (TaskMm + TaskGapMm) + set * _boxMm + 0.4, middle - BoxHighMm / 2, _boxMm - 0.8, BoxHighMm, 0.8);
            }
            sketch.Field(VisitedLeftMm + (_visitedMm - BoxHighMm) / 2, middle - BoxHighMm / 2, BoxHighMm, BoxHighMm, 0.8);
            sketch.Rule(_frame.LeftMm, _frame.RightMm, top + height);
        })
        { StretchMm = StretchMm };
    }

    // One line a task that offers this pupil other levels than it offers the class: which of the class's levels are the pupil's own 1, 2, 3.
    private IEnumerable<string> Offered(Pupil pupil)
    {
        for (var i = 0; i < _content.Tasks.Count; i++)
        {
            var own = OfferedLevel.Of(_content.Tasks[i], _record, pupil);
            if (own.Count == _class[i].Count) continue;
            var classNumbers = _class[i].Select(l => l.Number).ToList();
            var numbers = own.Count == 0 ? _words["NoneOffered"] : string.Join(' ', own.Select(l => classNumbers.IndexOf(l.Number) + 1));
            yield return _content.Tasks.Count == 1 ? numbers : _words.Of("OfferedTask", i + 1, numbers);
        }
    }
}
