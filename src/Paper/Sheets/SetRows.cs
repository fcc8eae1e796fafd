using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets.Sets;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>The sets as rows under three words that say what a pupil does: choose, try, check and decide.</summary>
internal sealed class SetRows
{
    private const double LeastNumberMm = 12.5;
    private const double NumberPt = 20;
    private const double GutterMm = 4.5;
    private const double LeastPadMm = 1.8;
    private const double LeastHintMm = 34;
    private const double StretchMm = 12;
    private const double BetweenMm = 1.8;

    // Of what a row is stretched by, this much is white above and below its cells, the rest between their pieces.
    private const double PadFraction = 0.6;

    private readonly SheetContent _content;
    private readonly SheetTask _task;
    private readonly SheetStyle _style;
    private readonly IReadOnlyList<SetPieces> _sets;
    private readonly Cell[] _cells;
    private readonly double _leastCellMm;

    public SetRows(SheetContent content, SheetTask task, int taskNumber, IReadOnlyList<OfferedLevel> offered, SheetStyle style)
    {
        (_content, _task, _style) = (content, task, style);
        _sets = [.. Enumerable.Range(1, content.SetCount).Select(set => SetPieces.Of(content, task, taskNumber, set, offered, style))];
        var first = _sets[0];
        var frame = style.Frame;
        var number = Math.Max(LeastNumberMm, LabelMm(first.Before));
        // The same places for every pupil: columns are sized by what the sheet has, not by what is offered to one.
        var chooseMm = Math.Max(LeastHintMm, first.Before.Select(p => p.WidthMm).DefaultIfEmpty(0).Max());
        var tries = LabelMm(first.During);
        var tryMm = Math.Max(LeastHintMm - tries, first.During.Max(p => p.WidthMm));
        var chooseLeft = frame.LeftMm + number;
        var tryLeft = chooseLeft + chooseMm + GutterMm + tries;
        var decideLeft = tryLeft + tryMm + GutterMm;
        _cells =
        [
            new(set => set.Before, chooseLeft, chooseMm, number),
            new(set => set.During, tryLeft, tryMm, tries),
            new(set => set.After, decideLeft, frame.RightMm - decideLeft, 0),
        ];
        _leastCellMm = _cells.Max(c => HeightMm(c.Of(first), c.WidthMm));
    }

    public IEnumerable<Block> Blocks()
    {
        var head = Head();
        var least = 2 * LeastPadMm + _leastCellMm;
        for (var set = 1; set <= _content.SetCount; set++)
        {
            var number = set;
            yield return new Block(least, (sketch, top, height) => Row(sketch, number, top, height))
            {
                StretchMm = StretchMm,
                Head = head,
                GapMm = 0,
                // The pupil's own words do not stand on a page alone.
                StaysWithNext = set == _content.SetCount && set > 1,
            };
        }
    }

    private static double LabelMm(IReadOnlyList<SetPiece> pieces) => pieces.Select(p => p.LabelMm).DefaultIfEmpty(0).Max();

    private static double HeightMm(IReadOnlyList<SetPiece> pieces, double widthMm) =>
        pieces.Sum(p => p.HeightMm(widthMm)) + Math.Max(0, pieces.Count - 1) * BetweenMm;

    private Block Head()
    {
        var (frame, type, words) = (_style.Frame, _style.Type, _style.Words);
        var isHeld = SetPieces.IsHeld(_task);
        var columns = new[]
        {
            (Cell: _cells[0], Left: _cells[0].LeftMm, Word: words["Choose"], Hints: ChooseHints()),
            (Cell: _cells[1], Left: _cells[1].LeftMm - _cells[1].LabelMm, Word: words["Try"], Hints: [words["TryHint"]]),
            (Cell: _cells[2], Left: _cells[2].LeftMm, Word: words["Decide"], Hints: [words["DecideHint"]]),
        }.Select(c => (c.Left, c.Word, Hint: c.Hints.SelectMany(h => type.Lines(h, c.Cell.LeftMm + c.Cell.WidthMm - c.Left, type.SmallPt)).ToList())).ToList();
        var word = type.LineMm(type.BodyPt);
        var height = word + columns.Max(c => c.Hint.Count) * type.LineMm(type.SmallPt) + 1.5;
        return new Block(height, (sketch, top, got) =>
        {
            sketch.Paragraph(frame.LeftMm, top, [words["Set"]], type.BodyPt, weight: TextWeight.Bold);
            foreach (var (left, name, hint) in columns)
            {
                sketch.Paragraph(left, top, [name], type.BodyPt, weight: TextWeight.Bold);
                sketch.Paragraph(left, top + word, hint, type.SmallPt, Tone.Muted);
            }
            sketch.Rule(frame.LeftMm, frame.RightMm, top + got, Tone.Ink, Sketch.EdgeMm);
        })
        { GapMm = 4, StaysWithNext = true };
    }

    private IReadOnlyList<string> ChooseHints()
    {
        var words = _style.Words;
        var hints = new List<string>();
        if (_sets[0].Before.Any(p => p is FieldRow { IsOfCards: true })) hints.Add(words["ChooseHint"]);
        if (_content.Predicts == PredictionKind.SuccessCount) hints.Add(words.Of("GuessHint", _content.TrialCount));
        if (_content.Predicts == PredictionKind.HoldS) hints.Add(words["GuessHintS"]);
        return hints;
    }

    private void Row(Sketch sketch, int set, double top, double height)
    {
        var spare = Math.Max(0, height - 2 * LeastPadMm - _leastCellMm);
        var pad = LeastPadMm + spare * PadFraction / 2;
        var cellTop = top + pad;
        var pieces = _sets[set - 1];
        sketch.Words(
            _style.Frame.LeftMm, cellTop + _style.FieldMm + TypeScale.HalfCapitalMm(NumberPt), $"{set}", NumberPt, Tone.Ink, TextWeight.Bold);
        foreach (var cell in _cells)
        {
            var own = cell.Of(pieces);
            var room = height - 2 * pad - HeightMm(own, cell.WidthMm);
            var between = BetweenMm + (own.Count > 1 ? Math.Min(room / (own.Count - 1), 4) : 0);
            var y = cellTop;
            foreach (var piece in own)
            {
                piece.DrawOn(sketch, cell.LeftMm, y, cell.WidthMm, cell.LabelMm);
                y += piece.HeightMm(cell.WidthMm) + between;
            }
        }
        sketch.Rule(_style.Frame.LeftMm, _style.Frame.RightMm, top + height);
    }

    private sealed record Cell(Func<SetPieces, IReadOnlyList<SetPiece>> Of, double LeftMm, double WidthMm, double LabelMm);
}
