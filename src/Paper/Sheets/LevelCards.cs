using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Sheets;

/// <summary>The levels side by side, all alike: number, how it is done, how much of it.</summary>
internal sealed class LevelCards(IReadOnlyList<OfferedLevel> offered, SheetStyle style)
{
    private const double GutterMm = 3;
    private const double PadMm = 3;
    private const double WideMm = 52;
    private const int TallLineCount = 5;
    private const double AgreementMm = 18;
    private const double UnderFigureMm = 1.5;
    private const double EdgePadMm = 1.5;
    private const double NarrowestFigureMm = 30;

    private readonly PageFrame _frame = style.Frame;
    private readonly PaperWords _words = style.Words;
    private readonly LevelFigures _figures = new(offered, style.FigureMm);

    // A figure of a number stands in it with room around.
    private double DiscMm => _frame.Type.LeadPt * 2 / 7;

    private double NumberMm => 2 * DiscMm - 1;

    // A figure stands above the words and under the number, which may reach a little into its box but not to its head.
    private double FigureMm => _figures.IsAny ? NumberMm + style.FigureMm + UnderFigureMm : 0;

    public IEnumerable<Block> Blocks()
    {
        if (offered.Count == 0)
        {
            yield return Headings.Block(_words["Agree"], _words["AgreeHint"], _frame) with { GapMm = 3.4 };
            yield return Agreement();
            yield break;
        }
        yield return Headings.Block(_words["Start"], _words["StartHint"], _frame) with { GapMm = 3.4 };
        var cards = style.IsStacked ? [.. new LevelList(offered, style).Blocks()] : Arranged();
        // What is done and how it is checked are read together.
        for (var i = 0; i < cards.Count; i++)
            yield return cards[i] with { GapMm = i == 0 ? 2 : GutterMm, StaysWithNext = !style.IsStacked || i == cards.Count - 1 };
    }

    // As many side by side as their words allow; the arrangement that needs least height where none does well.
    private List<Block> Arranged()
    {
        var arrangements = Enumerable.Range(1, offered.Count)
            .Select(rowCount => (offered.Count + rowCount - 1) / rowCount)
            .Distinct()
            .Select(perRow => (PerRow: perRow, Rows: Rows(perRow)))
            .ToList();
        var best = arrangements.FirstOrDefault(a => IsComfortable(a.PerRow)).Rows
            ?? arrangements.MinBy(a => a.Rows.Sum(r => r.LeastMm + GutterMm)).Rows;
        return best;
    }

    private double CardMm(int perRow) => (_frame.RoomMm - (perRow - 1) * GutterMm) / perRow;

    private static bool IsWide(double cardMm) => cardMm >= WideMm;

    private bool IsBeside(double cardMm) => IsWide(cardMm) && !_figures.IsAny;

    private double TextMm(double cardMm) => cardMm - 2 * PadMm - (IsBeside(cardMm) ? 2 * DiscMm + PadMm : 0);

    private IReadOnlyList<string> NameLines(OfferedLevel level, double cardMm) =>
        _frame.Type.Lines(level.Level.Name, TextMm(cardMm), _frame.Type.BodyPt);

    private IReadOnlyList<string> DoseLines(OfferedLevel level, double cardMm) =>
        _frame.Type.Lines(_words.Dose(level.Level.Dose), TextMm(cardMm), _frame.Type.BodyPt, TextWeight.Bold);

    private bool IsComfortable(int perRow)
    {
        var room = TextMm(CardMm(perRow));
        return (!_figures.IsAny || CardMm(perRow) >= NarrowestFigureMm) && offered.All(level =>
            NameLines(level, CardMm(perRow)).Count <= TallLineCount
            && level.Level.Name.Split(' ').All(w => _frame.Type.WidthMm(w, _frame.Type.BodyPt) <= room)
            && _words.Dose(level.Level.Dose).Split(' ').All(w => _frame.Type.WidthMm(w, _frame.Type.BodyPt, TextWeight.Bold) <= room));
    }

    private List<Block> Rows(int perRow)
    {
        var width = CardMm(perRow);
        // Equal in every row: no card is taller for what it says.
        var nameCount = offered.Max(l => NameLines(l, width).Count);
        var doseCount = offered.Max(l => DoseLines(l, width).Count);
        var line = _frame.Type.LineMm(_frame.Type.BodyPt);
        var text = (nameCount + doseCount) * line + 1;
        var height = 2 * PadMm + (_figures.IsAny ? FigureMm + text : IsBeside(width) ? Math.Max(text, 2 * DiscMm) : 2 * DiscMm + 2 + text);
        var all = offered.ToArray();
        return [.. offered.Chunk(perRow).Select(row => new Block(height, (sketch, top, got) =>
        {
            for (var i = 0; i < row.Length; i++) Card(sketch, row[i], Array.IndexOf(all, row[i]) + 1, _frame.LeftMm + i * (width + GutterMm), top, width, got);
        }))];
    }

    private void Card(Sketch sketch, OfferedLevel level, int number, double left, double top, double width, double height)
    {
        sketch.Field(left, top, width, height, 2.5);
        var (x, y) = (left + PadMm + DiscMm, top + PadMm + DiscMm);
        foreach (var shape in _figures.At(level, left + EdgePadMm, top + PadMm + NumberMm, width - 2 * EdgePadMm)) sketch.Add(shape);
        sketch.Add(new Disc(x, y, DiscMm, Tone.Accent));
        if (style.HasSigns) Signs.Dots(sketch, x + DiscMm + PadMm, y, Signs.DotsMm(style), number);
        sketch.Centred(x, y, $"{number}", _frame.Type.LeadPt, Tone.Ground, TextWeight.Bold);
        var (textLeft, textTop) = _figures.IsAny ? (left + PadMm, top + PadMm + FigureMm)
            : IsBeside(width) ? (left + 2 * PadMm + 2 * DiscMm, top + PadMm)
            : (left + PadMm, top + PadMm + 2 * DiscMm + 2);
        sketch.Paragraph(textLeft, textTop, NameLines(level, width), _frame.Type.BodyPt);
        var dose = DoseLines(level, width);
        // Doses stand on one line across the cards, so that they can be compared at a glance.
        sketch.Paragraph(textLeft, top + height - PadMm - dose.Count * _frame.Type.LineMm(_frame.Type.BodyPt), dose, _frame.Type.BodyPt, weight: TextWeight.Bold);
    }

    // A card like the others, to be filled in.
    private Block Agreement() => new(AgreementMm, (sketch, top, height) => sketch.Field(_frame.LeftMm, top, _frame.RoomMm, height, 2.5)) { GapMm = 2 };
}
