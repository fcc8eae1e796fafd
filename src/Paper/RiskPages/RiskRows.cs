using Slantwise.Paper.Layout;
using Slantwise.Paper.LessonPages;

namespace Slantwise.Paper.RiskPages;

/// <summary>Small lines as blocks of their own, alone or two beside each other.</summary>
internal sealed class RiskRows(PageFrame frame)
{
    public PageColumns Columns { get; } = new(frame);

    private double RightMm => frame.LeftMm + Columns.HalfMm + PageColumns.GutterMm;

    /// <summary>A heading that never stands last on a page.</summary>
    public Block Heading(string words, double gapMm) => Columns.Block(gapMm, (frame.LeftMm, [.. Columns.Lines(words, frame.RoomMm, isBold: true)])) with { StaysWithNext = true };

    /// <summary>Lines over the whole width. An item's lines stay together.</summary>
    public IEnumerable<Block> Lines(IEnumerable<PageLine> lines, double gapMm = 0) => Rows([.. lines], [], gapMm);

    /// <summary>Two columns of lines that begin at one height.</summary>
    public IEnumerable<Block> Beside(IReadOnlyList<PageLine> left, IReadOnlyList<PageLine> right, double gapMm = 0) => Rows(left, right, gapMm);

    /// <summary>Things to tick, two in a row, read from left to right.</summary>
    public IEnumerable<Block> Grid(IReadOnlyList<string> items)
    {
        IReadOnlyList<PageLine> Item(int i) => i < items.Count ? [.. Columns.Lines(items[i], Columns.HalfMm, PageLine.Box)] : [];
        for (var i = 0; i < items.Count; i += 2)
            foreach (var block in Rows(Item(i), Item(i + 1), 0.6)) yield return block;
    }

    private IEnumerable<Block> Rows(IReadOnlyList<PageLine> left, IReadOnlyList<PageLine> right, double gapMm)
    {
        IReadOnlyList<PageLine> At(IReadOnlyList<PageLine> lines, int i) => i < lines.Count ? [lines[i]] : [];
        bool GoesOn(IReadOnlyList<PageLine> lines, int i) => i + 1 < lines.Count && lines[i + 1].Mark == PageLine.Indent;
        for (var i = 0; i < Math.Max(left.Count, right.Count); i++)
        {
            yield return Columns.Block(i == 0 ? gapMm : 0, (frame.LeftMm, At(left, i)), (RightMm, At(right, i))) with
            {
                LeastMm = Columns.LineMm,
                StaysWithNext = GoesOn(left, i) || GoesOn(right, i),
            };
        }
    }
}
