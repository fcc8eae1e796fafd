using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Sheets.Sets;

/// <summary>Fields in a row, each under its number: levels, predictions, cues.</summary>
internal sealed class FieldRow(SheetStyle style, IReadOnlyList<(string Number, SheetField Field)> items, int roomCount) : SetPiece(style)
{
    // A row of more is hard to count along.
    private const int MostInRow = 6;
    private const double BetweenRowsMm = 1.2;
    private const double UnderDotsMm = 0.8;
    private const double BetweenNumbersMm = 1.5;

    /// <summary>Whether its fields are round: of them one is marked.</summary>
    public bool IsRound { get; init; } = true;

    /// <summary>Whether its numbers are those of the cards above, and look like them.</summary>
    public bool IsOfCards { get; init; }

    public override double WidthMm => (Math.Min(roomCount, MostInRow) - 1) * PitchMm + Style.FieldMm;

    // As far from one another as the longest number needs: seconds may have three digits.
    private double PitchMm => Math.Max(
        Style.PitchMm, items.Select(i => Type.WidthMm(i.Number, Type.SmallPt, IsOfCards ? TextWeight.Bold : TextWeight.Regular)).DefaultIfEmpty(0).Max() + BetweenNumbersMm);

    /// <summary>Whether there is anything to mark.</summary>
    public bool IsEmpty => items.Count == 0;

    private bool HasDots => Style.HasSigns && IsRound && IsOfCards;

    private double DotsMm => HasDots ? Signs.DotsHighMm(roomCount, Signs.DotsMm(Style)) + UnderDotsMm : 0;

    private double RowMm => DotsMm + OverMm + Style.FieldMm;

    public override double HeightMm(double widthMm) => RowCount(widthMm) * (RowMm + BetweenRowsMm) - BetweenRowsMm;

    // Rows by what the sheet has, not by what one pupil is offered: the same places for everybody.
    private int RowCount(double widthMm)
    {
        var perRow = Math.Max(1, (int)((widthMm + PitchMm - Style.FieldMm + 0.01) / PitchMm));
        return (Math.Max(roomCount, 1) + perRow - 1) / perRow;
    }

    public override void DrawOn(Sketch sketch, double left, double top, double width, double labelMm)
    {
        var rows = RowCount(width);
        var perRow = (roomCount + rows - 1) / rows;
        LabelOn(sketch, left, top + DotsMm + OverMm + Style.FieldMm / 2, labelMm);
        for (var i = 0; i < items.Count; i++)
        {
            var (x, y) = (left + i % perRow * PitchMm, top + DotsMm + OverMm + i / perRow * (RowMm + BetweenRowsMm));
            NumberOn(sketch, x + Style.FieldMm / 2, y, items[i].Number, IsOfCards ? Tone.Accent : Tone.Muted, IsOfCards ? TextWeight.Bold : TextWeight.Regular);
            if (HasDots)
            {
                var step = Signs.DotsMm(Style);
                Signs.Dots(sketch, x + (Style.FieldMm - (Math.Min(i + 1, 3) - 0.4) * step) / 2, y - OverMm - DotsMm / 2, step, i + 1);
            }
            sketch.Mark(items[i].Field, x, y, Style.FieldMm, IsRound);
        }
    }
}
