using static Slantwise.Engines.Drawing.Charts.ChartText;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>Levels as lines from easier to harder, and for each pupil a bar over what is within reach: a line that crosses a bar is a level within reach.</summary>
/// <remarks>Rows keep the order they are given in; the chart orders nobody. What is mostly assumed is hollow and dashed, so that it shows without colour. All words are the caller's.</remarks>
public static class ReachChart
{
    private const double RowMm = 4.8;
    private const double LaneMm = 4.6;
    private const double AxisMm = 5;
    private const double BarMm = 2.4;
    private const double CrossMm = 0.8;

    // Beyond the outermost levels a bar no longer says anything that its end at the edge does not.
    private const double BeyondLogits = 2.5;

    /// <summary>The chart.</summary>
    /// <param name="lines">The levels, in the order of the sheet; any number.</param>
    /// <param name="rows">The pupils, drawn from the top.</param>
    /// <param name="widthMm">40 or more; made for 80 to 120.</param>
    /// <param name="axis">What stands under the beginning, the middle and the end of the line.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>4.8 mm a row, 4.6 mm for each lane of heads (a second one where levels lie close) and 5 mm for the words below. Bars that leave the picture end at its edge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number; a place that is not finite; a span that ends before it begins; a range below 0; a barred line that is not there.</exception>
    public static Scene Of(IReadOnlyList<ReachLine> lines, IReadOnlyList<ReachRow> rows, double widthMm, ScaleText axis, string description)
    {
        CheckWidth(widthMm);
        foreach (var line in lines) Check(line);
        foreach (var row in rows) Check(row, lines.Count);

        var leftMm = rows.Count == 0 ? 2 : Math.Clamp(rows.Max(r => WidthMm(r.Label, LabelPt)) + 3, 12, widthMm * 0.34);
        var rightMm = widthMm - 2;
        var (least, most) = Bounds(lines, rows);
        var (heads, laneCount) = Heads([.. lines.Select(l => X(l.AtLogits))], [.. lines.Select(l => WidthMm(l.Label, LabelPt) + 2.6)], widthMm);
        var topMm = laneCount * LaneMm + 1;
        var bottomMm = topMm + rows.Count * RowMm;

        var shapes = new List<Shape> { new Line(leftMm, bottomMm, rightMm, bottomMm, 0.2, Tone.Faint) };
        for (var i = 0; i < rows.Count; i++) AddBar(rows[i], topMm + (i + .5) * RowMm);
        for (var i = 0; i < lines.Count; i++)
        {
            var (centreMm, lane) = heads[i];
            var headMm = lane * LaneMm + LaneMm / 2;
            var boxMm = WidthMm(lines[i].Label, LabelPt) + 2;
            shapes.Add(new Line(X(lines[i].AtLogits), headMm, X(lines[i].AtLogits), bottomMm, 0.35, Tone.Ink));
            shapes.Add(new Box(centreMm - boxMm / 2, headMm - 2, boxMm, 4, Tone.Ink, 0, 0.8));
            shapes.Add(new Text(centreMm, headMm + 1.15, lines[i].Label, LabelPt, Tone.Ground, TextAnchor.Middle, TextWeight.Bold));
        }
        for (var i = 0; i < rows.Count; i++) AddBarred(rows[i], topMm + (i + .5) * RowMm);
        shapes.Add(new Text(leftMm, bottomMm + 3.8, axis.Start, SmallPt, Tone.Muted));
        shapes.Add(new Text((leftMm + rightMm) / 2, bottomMm + 3.8, axis.Middle, SmallPt, Tone.Muted, TextAnchor.Middle));
        shapes.Add(new Text(rightMm, bottomMm + 3.8, axis.End, SmallPt, Tone.Muted, TextAnchor.End));
        return new Scene(widthMm, bottomMm + AxisMm, shapes, description);

        double X(double at) => leftMm + (Math.Clamp(at, least, most) - least) / (most - least) * (rightMm - leftMm);

        void AddBar(ReachRow row, double middleMm)
        {
            shapes.Add(new Text(0, middleMm + 1.1, Fitting(row.Label, LabelPt, leftMm - 2), LabelPt, row.IsMuted ? Tone.Muted : Tone.Ink));
            if (row.Span is not { } span)
            {
                if (row.Note.Length > 0) shapes.Add(new Text(leftMm, middleMm + 1, row.Note, SmallPt, Tone.Muted));
                return;
            }
            shapes.Add(new Line(X(span.LowLogits - row.OffLogits), middleMm, X(span.HighLogits + row.OffLogits), middleMm, 0.4, Tone.Muted, row.IsMuted));
            var (fromMm, toMm) = (X(span.LowLogits), X(span.HighLogits));
            // A bar that lies wholly beyond the edge is a stub there.
            if (toMm - fromMm < 1) (fromMm, toMm) = (Math.Clamp(fromMm - .5, leftMm, rightMm - 1), Math.Clamp(fromMm - .5, leftMm, rightMm - 1) + 1);
            if (row.IsMuted)
            {
                shapes.Add(new Box(fromMm, middleMm - BarMm / 2, toMm - fromMm, BarMm, Tone.Ground, 0, BarMm / 2));
                shapes.Add(new Box(fromMm, middleMm - BarMm / 2, toMm - fromMm, BarMm, Tone.Muted, 0.35, BarMm / 2));
                return;
            }
            shapes.Add(new Box(fromMm, middleMm - BarMm / 2, toMm - fromMm, BarMm, Tone.AccentMiddle, 0, BarMm / 2));
            // The fill alone is too pale to be told from the page.
            shapes.Add(new Box(fromMm, middleMm - BarMm / 2, toMm - fromMm, BarMm, Tone.Accent, 0.25, BarMm / 2));
        }

        void AddBarred(ReachRow row, double middleMm)
        {
            if (row.Span is null) return;
            foreach (var xMm in row.BarredLines.Select(i => X(lines[i].AtLogits)))
            {
                shapes.Add(new Disc(xMm, middleMm, CrossMm * 1.6, Tone.Ground));
                shapes.Add(new Line(xMm - CrossMm, middleMm - CrossMm, xMm + CrossMm, middleMm + CrossMm, 0.4, Tone.Ink));
                shapes.Add(new Line(xMm - CrossMm, middleMm + CrossMm, xMm + CrossMm, middleMm - CrossMm, 0.4, Tone.Ink));
            }
        }
    }

    // From the bars and levels; far bars are cut so that the levels do not crowd in the middle.
    private static (double LeastLogits, double MostLogits) Bounds(IReadOnlyList<ReachLine> lines, IReadOnlyList<ReachRow> rows)
    {
        var spans = rows.Where(r => r.Span is not null).Select(r => r.Span!.Value).ToList();
        double[] all = [.. lines.Select(l => l.AtLogits), .. spans.Select(s => s.LowLogits), .. spans.Select(s => s.HighLogits)];
        if (all.Length == 0) return (-1, 1);
        var (least, most) = (all.Min(), all.Max());
        if (lines.Count > 0)
        {
            least = Math.Max(least, lines.Min(l => l.AtLogits) - BeyondLogits);
            most = Math.Min(most, lines.Max(l => l.AtLogits) + BeyondLogits);
        }
        return (least - .4, most + .4);
    }

    // A head goes into the first lane where it touches none before it.
    private static (List<(double CentreMm, int Lane)> Heads, int LaneCount) Heads(double[] atMm, double[] widthsMm, double chartMm)
    {
        var heads = new (double CentreMm, int Lane)[atMm.Length];
        var ends = new List<double>();
        foreach (var i in Enumerable.Range(0, atMm.Length).OrderBy(i => atMm[i]))
        {
            var centreMm = Math.Clamp(atMm[i], widthsMm[i] / 2, Math.Max(widthsMm[i] / 2, chartMm - widthsMm[i] / 2));
            var lane = ends.FindIndex(end => end <= centreMm - widthsMm[i] / 2);
            if (lane < 0) (lane, ends) = (ends.Count, [.. ends, 0]);
            (heads[i], ends[lane]) = ((centreMm, lane), centreMm + widthsMm[i] / 2);
        }
        return ([.. heads], Math.Max(1, ends.Count));
    }

    /// <summary>Says what is wrong with a level, if anything is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A place that is not finite.</exception>
    private static void Check(ReachLine line)
    {
        if (!double.IsFinite(line.AtLogits)) throw new ArgumentOutOfRangeException(nameof(line), line, "A level lies at a finite place.");
    }

    /// <summary>Says what is wrong with a row, if anything is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A span that is not finite or ends before it begins; a range below 0; a barred line that is not there.</exception>
    private static void Check(ReachRow row, int lineCount)
    {
        if (row.Span is { } span && !(double.IsFinite(span.LowLogits) && double.IsFinite(span.HighLogits) && span.LowLogits <= span.HighLogits))
            throw new ArgumentOutOfRangeException(nameof(row), row, "A span is finite and ends where it begins or later.");
        if (!(row.OffLogits >= 0 && double.IsFinite(row.OffLogits))) throw new ArgumentOutOfRangeException(nameof(row), row, "A range is 0 or more.");
        if (row.BarredLines.Any(i => i < 0 || i >= lineCount)) throw new ArgumentOutOfRangeException(nameof(row), row, $"Only the {lineCount} lines that are there can be barred.");
    }
}
