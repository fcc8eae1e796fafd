using static Slantwise.Engines.Drawing.Charts.ChartText;

namespace Slantwise.Engines.Drawing.Charts;

/// <summary>Blocks on one time line, a row each, so that their words have room whatever their length.</summary>
public static class BlockLine
{
    private const double RowMm = 9;
    private const double BarMm = 3;
    private const double MarkMm = 5;

    /// <summary>The chart.</summary>
    /// <param name="blocks">1 or more, drawn from the top in the order given.</param>
    /// <param name="mark">A moment shown as a short line in every row; none for none. Beyond the last block it makes the line longer.</param>
    /// <param name="widthMm">40 or more; made for 80 to 160.</param>
    /// <param name="description">What it shows, in a sentence made from its numbers.</param>
    /// <returns>9 mm a row, and 5 mm for the words of a mark.</returns>
    /// <exception cref="ArgumentException">No block.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Narrower than 40 mm, or not a number; a block that ends before it begins, or begins below 0; a hollow share not of 0 to 1; a moment below 0.</exception>
    public static Scene Of(IReadOnlyList<BlockSpan> blocks, BlockMark? mark, double widthMm, string description)
    {
        CheckWidth(widthMm);
        if (blocks.Count == 0) throw new ArgumentException("A time line has 1 block or more.", nameof(blocks));
        foreach (var block in blocks)
        {
            if (!(block.StartS >= 0 && block.EndS > block.StartS && double.IsFinite(block.EndS) && block.HollowFraction is >= 0 and <= 1))
                throw new ArgumentOutOfRangeException(nameof(blocks), block, "A block ends after it begins, and its hollow share is 0 to 1.");
        }
        if (mark is { AtS: not (>= 0 and < double.PositiveInfinity) }) throw new ArgumentOutOfRangeException(nameof(mark), mark, "A moment is 0 or more.");

        var wholeS = Math.Max(blocks.Max(b => b.EndS), mark?.AtS ?? 0);
        double X(double atS) => 0.3 + atS / wholeS * (widthMm - 0.6);
        var bottomMm = blocks.Count * RowMm;
        var shapes = new List<Shape>();
        for (var i = 0; i < blocks.Count; i++)
        {
            var (block, topMm) = (blocks[i], i * RowMm);
            shapes.Add(new Text(0, topMm + 3.6, Fitting(block.Label, LabelPt, widthMm - WidthMm(block.TimeText, SmallPt) - 3), LabelPt, Tone.Ink));
            shapes.Add(new Text(widthMm, topMm + 3.6, block.TimeText, SmallPt, Tone.Muted, TextAnchor.End));
            shapes.Add(new Line(X(0), topMm + 6.3, X(wholeS), topMm + 6.3, 0.2, Tone.Faint));
            var (leftMm, lengthMm) = (X(block.StartS), X(block.EndS) - X(block.StartS));
            if (block.HollowFraction > 0) shapes.Add(new Box(leftMm, topMm + 4.8, lengthMm, BarMm, Tone.Ground));
            if (block.HollowFraction < 1) shapes.Add(new Box(leftMm, topMm + 4.8, lengthMm * (1 - block.HollowFraction), BarMm, block.Tone));
            if (block.HollowFraction > 0) shapes.Add(new Box(leftMm, topMm + 4.8, lengthMm, BarMm, block.Tone, 0.3));
        }
        if (mark is null) return new Scene(widthMm, bottomMm, shapes, description);

        // In pieces beside the bars, so that it crosses no words.
        for (var i = 0; i < blocks.Count; i++) shapes.Add(new Line(X(mark.AtS), i * RowMm + 4.5, X(mark.AtS), (i + 1) * RowMm - 0.6, 0.5, Tone.Ink));
        // Its words keep inside the picture on the side where there is room.
        var isRight = X(mark.AtS) > widthMm / 2;
        shapes.Add(new Text(X(mark.AtS), bottomMm + 3.6, mark.Label, SmallPt, Tone.Ink, isRight ? TextAnchor.End : TextAnchor.Start));
        return new Scene(widthMm, bottomMm + MarkMm, shapes, description);
    }
}
