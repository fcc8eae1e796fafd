using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>The sets as rows under three words that say what a pupil does: choose, try, check and decide.</summary>
internal sealed class SetColumns
{
    private const double LeastNumberMm = 12.5;
    private const double NumberPt = 20;
    private const double AfterNumberMm = 2;
    private const double GutterMm = 4.5;
    private const double LeastHintMm = 34;
    private const double StretchMm = 12;
    private const double BetweenMm = 1.6;
    private const double MostBetweenMm = 4;

    // Of what a row is stretched by, this much is white above and below its cells, the rest between their pieces.
    private const double PadFraction = 0.6;

    private readonly SheetContent _content;
    private readonly SheetStyle _style;
    private readonly IReadOnlyList<SetPieces> _sets;
    private readonly Cell[] _cells;
    private readonly double _leastCellMm;

    public SetColumns(SheetContent content, IReadOnlyList<SetPieces> sets, SheetStyle style)
    {
        (_content, _style, _sets) = (content, style, sets);
        var first = sets[0];
        var frame = style.Frame;
        var number = new[]
        {
            LeastNumberMm, LabelMm(first.Before), style.Type.WidthMm(style.Words["Set"], style.Type.BodyPt, TextWeight.Bold) + AfterNumberMm,
        }.Max();
        // The same places for every pupil: columns are sized by what the sheet has, not by what is offered to one.
        var chooseMm = Math.Max(LeastHintMm, WidthMm(first.Before));
        var tries = LabelMm(first.During);
        var tryMm = Math.Max(LeastHintMm - tries, WidthMm(first.During));
        var chooseLeft = frame.LeftMm + number;
        var tryLeft = chooseLeft + chooseMm + GutterMm + tries;
        var decideLeft = tryLeft + tryMm + GutterMm;
        _cells =
        [
            new(set => set.Before, chooseLeft, chooseMm, number),
            new(set => set.During, tryLeft, tryMm, tries),
            new(set => set.After, decideLeft, frame.RightMm - decideLeft, 0),
        ];
        IsFitting = _cells[2].WidthMm >= Math.Max(LeastHintMm, WidthMm(first.After));
        _leastCellMm = IsFitting ? _cells.Max(c => HeightMm(c.Of(first), c.WidthMm)) : 0;
    }

    /// <summary>Whether the page is wide enough for what the sets ask.</summary>
    public bool IsFitting { get; }

    public IEnumerable<Block> Blocks()
    {
        var head = Head();
        var least = 2 * _style.SetPadMm + _leastCellMm;
        for (var set = 1; set <= _sets.Count; set++)
        {
            var number = set;
            yield return new Block(least, (sketch, top, height) => Row(sketch, number, top, height))
            {
                StretchMm = StretchMm,
                Head = head,
                GapMm = 0,
                // The pupil's own words do not stand on a page alone.
                StaysWithNext = set == _sets.Count && set > 1,
            };
        }
    }

    private static double LabelMm(IReadOnlyList<SetPiece> pieces) => pieces.Select(p => p.LabelMm).DefaultIfEmpty(0).Max();

    private static double WidthMm(IReadOnlyList<SetPiece> pieces) => pieces.Select(p => p.WidthMm).DefaultIfEmpty(0).Max();

    private static double HeightMm(IReadOnlyList<SetPiece> pieces, double widthMm) =>
        pieces.Sum(p => p.HeightMm(widthMm)) + Math.Max(0, pieces.Count - 1) * BetweenMm;

    private Block Head()
    {
        var (frame, type) = (_style.Frame, _style.Type);
        // The tries' heading stands over their labels, the others over their fields.
        double[] lefts = [_cells[0].LeftMm, _cells[1].LeftMm - _cells[1].LabelMm, _cells[2].LeftMm];
        var columns = SetHints.Of(_content, _sets[0], _style).Select((c, i) => (
            Left: lefts[i], c.Word,
            Hint: c.Hints.SelectMany(h => type.Lines(h, _cells[i].LeftMm + _cells[i].WidthMm - lefts[i], type.SmallPt)).ToList(),
            WordLines: type.Lines(c.Word, _cells[i].LeftMm + _cells[i].WidthMm - lefts[i], type.BodyPt, TextWeight.Bold))).ToList();
        var word = type.LineMm(type.BodyPt) * columns.Max(c => c.WordLines.Count);
        var height = word + columns.Max(c => c.Hint.Count) * type.LineMm(type.SmallPt) + 1.5;
        return new Block(height, (sketch, top, got) =>
        {
            sketch.Paragraph(frame.LeftMm, top, [_style.Words["Set"]], type.BodyPt, weight: TextWeight.Bold);
            foreach (var (left, _, hint, lines) in columns)
            {
                sketch.Paragraph(left, top, lines, type.BodyPt, weight: TextWeight.Bold);
                sketch.Paragraph(left, top + word, hint, type.SmallPt, Tone.Muted);
            }
            sketch.Rule(frame.LeftMm, frame.RightMm, top + got, Tone.Ink, Sketch.EdgeMm);
        })
        { GapMm = 4, StaysWithNext = true };
    }

    private void Row(Sketch sketch, int set, double top, double height)
    {
        var spare = Math.Max(0, height - 2 * _style.SetPadMm - _leastCellMm);
        var pad = _style.SetPadMm + spare * PadFraction / 2;
        var cellTop = top + pad;
        sketch.Words(
            _style.Frame.LeftMm, cellTop + _style.FieldMm + TypeScale.HalfCapitalMm(NumberPt), $"{set}", NumberPt, Tone.Ink, TextWeight.Bold);
        foreach (var cell in _cells)
        {
            var own = cell.Of(_sets[set - 1]);
            var room = height - 2 * pad - HeightMm(own, cell.WidthMm);
            var between = BetweenMm + (own.Count > 1 ? Math.Min(room / (own.Count - 1), MostBetweenMm) : 0);
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
