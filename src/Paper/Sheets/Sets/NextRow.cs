using Slantwise.Paper.Layout;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>What comes next, a round field before each word. The three stand alike; the pupil decides.</summary>
internal sealed class NextRow(SheetStyle style, string label, int task, int set) : SetPiece(style)
{
    private const double BetweenWordsMm = 2.6;
    private const double BetweenRowsMm = 1.6;

    private readonly (NextLevel Next, string Word)[] _items =
        [(NextLevel.Easier, style.Words["Easier"]), (NextLevel.Same, style.Words["Same"]), (NextLevel.Harder, style.Words["Harder"])];

    public override string Label => label;

    public override double WidthMm => _items.Max(i => ItemMm(i.Word));

    public override double HeightMm(double widthMm) => Flowed(widthMm).Max(p => p.Row + 1) * (Style.FieldMm + BetweenRowsMm) - BetweenRowsMm;

    public override void DrawOn(Sketch sketch, double left, double top, double width, double labelMm)
    {
        LabelOn(sketch, left, top + Style.FieldMm / 2, labelMm);
        foreach (var (next, word, at, row) in Flowed(width))
        {
            var (x, y) = (left + at, top + row * (Style.FieldMm + BetweenRowsMm));
            sketch.Mark(new SheetField(SheetFieldKind.Next, task, set, (int)next), x, y, Style.FieldMm, isRound: true);
            sketch.Words(x + Style.FieldMm + BesideMm, y + Style.FieldMm / 2 + TypeScale.HalfCapitalMm(Type.SmallPt), word, Type.SmallPt);
        }
    }

    private double ItemMm(string word) => Style.FieldMm + BesideMm + Type.WidthMm(word, Type.SmallPt);

    private List<(NextLevel Next, string Word, double At, int Row)> Flowed(double widthMm)
    {
        var placed = new List<(NextLevel, string, double, int)>();
        var (at, row) = (0.0, 0);
        foreach (var (next, word) in _items)
        {
            if (at > 0 && at + ItemMm(word) > widthMm + 0.01) (at, row) = (0, row + 1);
            placed.Add((next, word, at, row));
            at += ItemMm(word) + BetweenWordsMm;
        }
        return placed;
    }
}
