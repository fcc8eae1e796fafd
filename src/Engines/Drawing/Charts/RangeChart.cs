using static Slantwise.Engines.Drawing.Charts.ChartText;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>Shares with their ranges, one row each: a dot for what was seen, a bar for what it may be.</summary>
/// <remarks>Few trials are hollow and their bars dashed, so that it shows without colour. All words are the caller's.</remarks>
public static class RangeChart
{
    private const double RowMm = 10;
    private const double AxisMm = 5;
    private const double EdgeMm = 1.6;
    private const double DotMm = 1.3;
    private const double BarMm = 1.8;

    /// <summary>The chart.</summary>
    /// <param name="rows">Any number, drawn from the top.</param>
    /// <param name="widthMm">40 or more; made for 60 to 120.</param>
    /// <param name="axis">What stands under 0, the middle and 1 of the scale.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>10 mm a row and 5 mm for the scale.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number; a share without its range, or one outside it or outside 0 to 1.</exception>
    public static Scene Of(IReadOnlyList<RangeRow> rows, double widthMm, ScaleText axis, string description)
    {
        CheckWidth(widthMm);
        foreach (var row in rows) Check(row);

        var heightMm = rows.Count * RowMm + AxisMm;
        var shapes = new List<Shape>();
        foreach (var atFraction in new[] { 0, 0.5, 1 })
            shapes.Add(new Line(X(atFraction), 0, X(atFraction), heightMm - AxisMm + 0.8, 0.2, Tone.Faint));
        for (var i = 0; i < rows.Count; i++) AddRow(shapes, rows[i], i * RowMm);
        shapes.Add(new Text(X(0) - EdgeMm, heightMm - 0.8, axis.Start, SmallPt, Tone.Muted));
        shapes.Add(new Text(X(0.5), heightMm - 0.8, axis.Middle, SmallPt, Tone.Muted, TextAnchor.Middle));
        shapes.Add(new Text(widthMm, heightMm - 0.8, axis.End, SmallPt, Tone.Muted, TextAnchor.End));
        return new Scene(widthMm, heightMm, shapes, description);

        double X(double fraction) => EdgeMm + fraction * (widthMm - 2 * EdgeMm);

        void AddRow(List<Shape> to, RangeRow row, double topMm)
        {
            var words = row.IsMuted || row.ShareFraction is null ? Tone.Muted : Tone.Ink;
            var labelMm = widthMm - WidthMm(row.CountText, SmallPt) - 3;
            // The page's ground behind the words keeps the scale's lines out of them.
            to.Add(new Box(0, topMm + 0.4, widthMm, 4.2, Tone.Ground));
            to.Add(new Text(0, topMm + 3.6, Fitting(row.Label, LabelPt, labelMm), LabelPt, Tone.Ink));
            to.Add(new Text(widthMm, topMm + 3.6, row.CountText, SmallPt, words, TextAnchor.End));
            var middleMm = topMm + 6.8;
            to.Add(new Line(X(0), middleMm, X(1), middleMm, 0.2, Tone.Faint));
            if (row is not { ShareFraction: { } share, LowFraction: { } low, HighFraction: { } high })
            {
                if (row.Note.Length == 0) return;
                to.Add(new Box(X(0), middleMm - 1.6, WidthMm(row.Note, SmallPt) + 1, 3.2, Tone.Ground));
                to.Add(new Text(X(0) - EdgeMm, middleMm + 1, row.Note, SmallPt, Tone.Muted));
                return;
            }
            if (row.IsMuted)
            {
                to.Add(new Line(X(low), middleMm, X(high), middleMm, 0.6, Tone.Muted, IsDashed: true));
                to.Add(new Disc(X(share), middleMm, DotMm, Tone.Ground));
                to.Add(new Disc(X(share), middleMm, DotMm, Tone.Muted, 0.4));
                return;
            }
            to.Add(new Box(X(low), middleMm - BarMm / 2, Math.Max(0.4, X(high) - X(low)), BarMm, Tone.AccentSoft, 0, BarMm / 2));
            to.Add(new Disc(X(share), middleMm, DotMm, Tone.Accent));
        }
    }

    /// <summary>Says what is wrong with a row, if anything is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A share without its range, or one outside it or outside 0 to 1.</exception>
    private static void Check(RangeRow row)
    {
        var isEmpty = row is { ShareFraction: null, LowFraction: null, HighFraction: null };
        var isOrdered = 0 <= row.LowFraction && row.LowFraction <= row.ShareFraction && row.ShareFraction <= row.HighFraction && row.HighFraction <= 1;
        if (!isEmpty && !isOrdered)
            throw new ArgumentOutOfRangeException(nameof(row), row, "A share lies from 0 to 1 inside its range, or both are left out.");
    }
}
