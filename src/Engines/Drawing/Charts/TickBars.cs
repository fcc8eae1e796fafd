using static Slantwise.Engines.Drawing.Charts.ChartText;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>How often each cue was left open: a frame for the sets checked, filled as far as it was left open.</summary>
public static class TickBars
{
    private const double RowMm = 10;
    private const double BarMm = 2.6;

    /// <summary>The chart.</summary>
    /// <param name="rows">Any number, drawn from the top in the order of the sheet.</param>
    /// <param name="widthMm">40 or more; made for 60 to 120.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>10 mm a row, at least one. Frames are as long as the sets checked, against the row with most.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number; open sets below 0 or above the sets checked.</exception>
    public static Scene Of(IReadOnlyList<TickRow> rows, double widthMm, string description)
    {
        CheckWidth(widthMm);
        foreach (var row in rows)
        {
            if (row.UntickedCount < 0 || row.UntickedCount > row.CheckedCount)
                throw new ArgumentOutOfRangeException(nameof(rows), row, "Sets left open lie from 0 to the sets checked.");
        }
        var most = rows.Select(r => r.CheckedCount).DefaultIfEmpty(0).Max();
        var shapes = new List<Shape>();
        for (var i = 0; i < rows.Count; i++)
        {
            var (row, topMm) = (rows[i], i * RowMm);
            var labelMm = widthMm - WidthMm(row.CountText, SmallPt) - 3;
            shapes.Add(new Text(0, topMm + 3.6, Fitting(row.Label, LabelPt, labelMm), LabelPt, Tone.Ink));
            shapes.Add(new Text(widthMm, topMm + 3.6, row.CountText, SmallPt, row.CheckedCount == 0 ? Tone.Muted : Tone.Ink, TextAnchor.End));
            if (row.CheckedCount == 0)
            {
                shapes.Add(new Line(0.2, topMm + 6.8, widthMm - 0.2, topMm + 6.8, 0.3, Tone.Faint, IsDashed: true));
                continue;
            }
            var unitMm = (widthMm - 0.4) / most;
            if (row.UntickedCount > 0)
                shapes.Add(new Box(0.2, topMm + 5.5, row.UntickedCount * unitMm, BarMm, Tone.Accent));
            shapes.Add(new Box(0.2, topMm + 5.5, row.CheckedCount * unitMm, BarMm, Tone.Muted, 0.25));
        }
        return new Scene(widthMm, Math.Max(1, rows.Count) * RowMm, shapes, description);
    }
}
