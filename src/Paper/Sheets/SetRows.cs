using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Paper.Sheets;

/// <summary>The sets as rows under three words that say what a pupil does: choose, try, check and decide.</summary>
internal sealed class SetRows
{
    private const double NumberMm = 12.5;
    private const double NumberPt = 20;
    private const double GutterMm = 5;
    private const double LeastPadMm = 2.2;
    private const double StretchMm = 12;

    // Of what a row is stretched by, this much is white above and below its cells, the rest their own.
    private const double PadFraction = 0.8;

    private readonly SheetContent _content;
    private readonly PageFrame _frame;
    private readonly PaperWords _words;
    private readonly bool _isHeld;
    private readonly ChooseCell _choose;
    private readonly TryCell _try;
    private readonly DecideCell _decide;

    public SetRows(SheetContent content, SheetTask task, IReadOnlyList<OfferedLevel> offered, PageFrame frame, PaperWords words)
    {
        (_content, _frame, _words) = (content, frame, words);
        _isHeld = task.Levels.Any(l => l.Dose.Kind == DoseKind.HoldS);
        // The same places for every pupil: sized by what the sheet has, not by what is offered to one.
        _choose = new ChooseCell([.. offered.Select(l => l.Number)], task.Levels.Count, content, words);
        _try = new TryCell(content.TrialCount, _isHeld, words);
        _decide = new DecideCell(task.Cues.Count, frame.RightMm - DecideLeftMm, words);
    }

    private double ChooseLeftMm => _frame.LeftMm + NumberMm;

    private double TryLeftMm => ChooseLeftMm + _choose.WidthMm + GutterMm;

    private double DecideLeftMm => TryLeftMm + _try.WidthMm + GutterMm;

    private double LeastCellMm => new[] { _choose.LeastMm, _try.LeastMm, _decide.LeastMm }.Max();

    public IEnumerable<Block> Blocks()
    {
        var head = Head();
        var least = 2 * LeastPadMm + LeastCellMm;
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

    private Block Head()
    {
        var columns = new[]
        {
            (Left: ChooseLeftMm, Word: _words["Choose"],
                Hint: [.. _choose.Asks.SelectMany(key => Hint(key, _choose.WidthMm))]),
            (Left: TryLeftMm, Word: _words["Try"], Hint: Hint(_isHeld ? "TryHoldHint" : "TryHint", _try.WidthMm)),
            (Left: DecideLeftMm, Word: _words["Decide"], Hint: Hint("DecideHint", _frame.RightMm - DecideLeftMm)),
        };
        var word = TypeScale.LineMm(TypeScale.BodyPt);
        var height = word + columns.Max(c => c.Hint.Count) * TypeScale.LineMm(TypeScale.SmallPt) + 1.5;
        return new Block(height, (sketch, top, got) =>
        {
            sketch.Paragraph(_frame.LeftMm, top, [_words["Set"]], TypeScale.BodyPt, weight: TextWeight.Bold);
            foreach (var column in columns)
            {
                sketch.Paragraph(column.Left, top, [column.Word], TypeScale.BodyPt, weight: TextWeight.Bold);
                sketch.Paragraph(column.Left, top + word, column.Hint, TypeScale.SmallPt, Tone.Muted);
            }
            sketch.Rule(_frame.LeftMm, _frame.RightMm, top + got, Tone.Ink, Sketch.EdgeMm);
        })
        { GapMm = 4, StaysWithNext = true };
    }

    private IReadOnlyList<string> Hint(string key, double widthMm) => TextMeasure.Lines(_words[key], widthMm, TypeScale.SmallPt);

    private void Row(Sketch sketch, int set, double top, double height)
    {
        var pad = LeastPadMm + (height - 2 * LeastPadMm - LeastCellMm) * PadFraction / 2;
        var (cellTop, cellHeight) = (top + pad, height - 2 * pad);
        sketch.Words(_frame.LeftMm, cellTop + ChooseCell.MiddleMm + TypeScale.HalfCapitalMm(NumberPt), $"{set}", NumberPt, Tone.Ink, TextWeight.Bold);
        _choose.DrawOn(sketch, ChooseLeftMm, cellTop, cellHeight);
        _try.DrawOn(sketch, TryLeftMm, cellTop, cellHeight);
        _decide.DrawOn(sketch, DecideLeftMm, cellTop, cellHeight);
        sketch.Rule(_frame.LeftMm, _frame.RightMm, top + height);
    }
}
