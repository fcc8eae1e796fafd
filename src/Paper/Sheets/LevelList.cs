using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;

namespace Slantwise.Paper.Sheets;

/// <summary>The levels under one another, all alike, for type too large for cards side by side: number, figure, words.</summary>
internal sealed class LevelList(IReadOnlyList<OfferedLevel> offered, SheetStyle style)
{
    private const double GapMm = 3;
    private const double PadMm = 3;
    private const double FigureWideFraction = 1.3;

    private readonly PageFrame _frame = style.Frame;
    private readonly LevelFigures _figures = new(offered, style.FigureMm);

    private double DiscMm => _frame.Type.LeadPt * 2 / 7;

    private double FigureMm => _figures.IsAny ? style.FigureMm * FigureWideFraction + PadMm : 0;

    private double DotsMm => style.HasSigns ? 3 * Signs.DotsMm(style) + PadMm : 0;

    private double TextLeftMm => _frame.LeftMm + 2 * PadMm + 2 * DiscMm + DotsMm + FigureMm;

    private double TextMm => _frame.RightMm - PadMm - TextLeftMm;

    public IEnumerable<Block> Blocks()
    {
        var type = _frame.Type;
        var texts = offered.Select(l => (
            Names: type.Lines(l.Level.Name, TextMm, type.BodyPt), Doses: type.Lines(style.Words.Dose(l.Level.Dose), TextMm, type.BodyPt, TextWeight.Bold))).ToList();
        // No card is taller for what it says.
        var height = 2 * PadMm + Math.Max(
            _figures.IsAny ? style.FigureMm : 2 * DiscMm, texts.Max(t => t.Names.Count + t.Doses.Count) * type.LineMm(type.BodyPt));
        for (var i = 0; i < offered.Count; i++)
        {
            var (level, number, (names, doses)) = (offered[i], i + 1, texts[i]);
            yield return new Block(height, (sketch, top, got) =>
            {
                sketch.Field(_frame.LeftMm, top, _frame.RoomMm, got, 2.5);
                var (x, y) = (_frame.LeftMm + PadMm + DiscMm, top + PadMm + DiscMm);
                foreach (var shape in _figures.At(level, TextLeftMm - FigureMm, top + (got - style.FigureMm) / 2, FigureMm - PadMm)) sketch.Add(shape);
                sketch.Add(new Disc(x, y, DiscMm, Tone.Accent));
                sketch.Centred(x, y, $"{number}", type.LeadPt, Tone.Ground, TextWeight.Bold);
                if (style.HasSigns) Signs.Dots(sketch, x + DiscMm + PadMm, y, Signs.DotsMm(style), number);
                sketch.Paragraph(TextLeftMm, top + PadMm, names, type.BodyPt);
                sketch.Paragraph(TextLeftMm, top + got - PadMm - doses.Count * type.LineMm(type.BodyPt), doses, type.BodyPt, weight: TextWeight.Bold);
            })
            { GapMm = i == 0 ? 2 : GapMm };
        }
    }
}
