using Slantwise.Paper.Layout;
using Slantwise.Records.Entries;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>What comes next, a round field before each word. The three stand alike; the pupil decides.</summary>
internal sealed class NextRow(SheetStyle style, int task, int set) : SetPiece(style)
{
    private const double BetweenWordsMm = 2.6;
    private const double BetweenRowsMm = 1.6;

    private readonly (NextLevel Next, Sign Sign, string Word)[] _items =
    [
        (NextLevel.Easier, Sign.Down, style.Words["Easier"]), (NextLevel.Same, Sign.Along, style.Words["Same"]), (NextLevel.Harder, Sign.Up, style.Words["Harder"]),
    ];

    public override double WidthMm => _items.Max(i => ItemMm(i.Sign, i.Word));

    public override double HeightMm(double widthMm) => Flowed(widthMm).Max(p => p.Row + 1) * (Style.FieldMm + BetweenRowsMm) - BetweenRowsMm;

    public override void DrawOn(Sketch sketch, double left, double top, double width, double labelMm)
    {
        LabelOn(sketch, left, top + Style.FieldMm / 2, labelMm);
        foreach (var (next, sign, word, at, row) in Flowed(width))
        {
            var (x, y) = (left + at, top + row * (Style.FieldMm + BetweenRowsMm));
            sketch.Mark(new SheetField(SheetFieldKind.Next, task, set, (int)next), x, y, Style.FieldMm, isRound: true);
            LabelOn(sketch, sign, word, x + Style.FieldMm + BesideMm, y + Style.FieldMm / 2);
        }
    }

    private double ItemMm(Sign sign, string word) => Style.FieldMm + BesideMm + LabelWidthMm(sign, word) - AfterLabelMm;

    private List<(NextLevel Next, Sign Sign, string Word, double At, int Row)> Flowed(double widthMm)
    {
        var placed = new List<(NextLevel, Sign, string, double, int)>();
        var (at, row) = (0.0, 0);
        foreach (var (next, sign, word) in _items)
        {
            if (at > 0 && at + ItemMm(sign, word) > widthMm + 0.01) (at, row) = (0, row + 1);
            placed.Add((next, sign, word, at, row));
            at += ItemMm(sign, word) + BetweenWordsMm;
        }
        return placed;
    }
}
