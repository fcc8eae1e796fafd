using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.LessonPages;

namespace Slantwise.Paper.RiskPages;

/// <summary>Small lines as blocks of their own, so that a page may end between them: texts over the whole width, or things beside each other.</summary>
internal sealed class RiskRows(PageFrame frame)
{
    private const double RowMm = 0.6;

    // A text of so many lines is not parted; of a longer one no line stands alone on a page.
    private const int TogetherCount = 4;

    private readonly PageColumns _columns = new(frame);

    private double RightMm => frame.LeftMm + _columns.HalfMm + PageColumns.GutterMm;

    /// <summary>A heading that never stands last on a page.</summary>
    public Block Heading(string words, double gapMm) =>
        _columns.Block(gapMm, (frame.LeftMm, [.. _columns.Lines(words, frame.RoomMm, isBold: true)])) with { StaysWithNext = true };

    /// <summary>Texts over the whole width.</summary>
    public IEnumerable<Block> Texts(IEnumerable<string> texts, string mark = "", bool isBold = false, Tone tone = Tone.Ink, double gapMm = 0)
    {
        var gap = gapMm;
        foreach (var text in texts)
        {
            IReadOnlyList<PageLine> lines = [.. _columns.Lines(text, frame.RoomMm, mark, isBold: isBold, tone: tone)];
            for (var i = 0; i < lines.Count; i++, gap = 0)
                yield return _columns.Block(gap, (frame.LeftMm, [lines[i]])) with { StaysWithNext = i < lines.Count - 1 && (lines.Count <= TogetherCount || i == 0 || i == lines.Count - 2) };
        }
    }

    /// <summary>Things two in a row, read from left to right.</summary>
    public IEnumerable<Block> Grid(IReadOnlyList<string> items, string mark)
    {
        for (var i = 0; i < items.Count; i += 2)
            yield return _columns.Block(i == 0 ? 0 : RowMm, (frame.LeftMm, Item(items[i], mark)), (RightMm, i + 1 < items.Count ? Item(items[i + 1], mark) : []));
    }

    private IReadOnlyList<PageLine> Item(string text, string mark) => [.. _columns.Lines(text, _columns.HalfMm, mark)];
}
