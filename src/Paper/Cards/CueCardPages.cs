using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Postures;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Cards;

/// <summary>A card for each cue, eight on a page, to cut apart. Nothing stands on their backs.</summary>
public static class CueCardPages
{
    private const int ColumnCount = 2;
    private const int RowCount = 4;
    private const double BorderMm = 10;
    private const double MarkMm = 4;

    // Nearer to the edge a desk printer may not reach.
    private const double MarkFromEdgeMm = 6;

    /// <summary>The pages, task by task and cue by cue.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="options">Paper and language.</param>
    /// <returns>
    /// Figures take turns through the levels that show one and that the policy allows: a cue is the same at every level. Empty where no task has a cue.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task.</exception>
    public static IReadOnlyList<Scene> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("Cue cards are printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        var paper = PageFrame.Of(options.Size);
        var (words, type) = (new CardWords(options.Language), CardScale.TypeOf(options));
        var pages = sheet.Content.Tasks.SelectMany(task => Cards(task, record)).Chunk(ColumnCount * RowCount).ToList();
        return [.. pages.Select((cards, p) =>
        {
            var sketch = new Sketch(type);
            var (width, height) = (paper.WidthMm / ColumnCount, paper.HeightMm / RowCount);
            for (var i = 0; i < cards.Length; i++)
                cards[i].DrawOn(sketch, new Area(i % ColumnCount * width, i / ColumnCount * height, width, height).Inside(BorderMm), words, options, type);
            Marks(sketch, paper.WidthMm, paper.HeightMm);
            var scene = new Scene(paper.WidthMm, paper.HeightMm, sketch.Shapes, words.Of("CuesDescription", p + 1, pages.Count));
            return options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;
        })];
    }

    private static IEnumerable<CueCard> Cards(SheetTask task, LessonRecord record)
    {
        var shown = OfferedLevel.Of(task, record, null)
            .Select(o => o.Level.Posture is { } key ? PostureLibrary.Find(key) : null)
            .OfType<Posture>().Select(p => p.Settle()).ToList();
        return task.Cues.Select((cue, i) => new CueCard(task.Name, i + 1, cue, shown.Count == 0 ? null : shown[i % shown.Count]));
    }

    // Where the cards part: a short line at each edge, a cross between.
    private static void Marks(Sketch sketch, double widthMm, double heightMm)
    {
        void Line(double x1, double y1, double x2, double y2) => sketch.Add(new Line(x1, y1, x2, y2, Sketch.HairlineMm, Tone.Muted));
        for (var column = 1; column < ColumnCount; column++)
        {
            var x = widthMm * column / ColumnCount;
            Line(x, MarkFromEdgeMm, x, MarkFromEdgeMm + MarkMm);
            Line(x, heightMm - MarkFromEdgeMm - MarkMm, x, heightMm - MarkFromEdgeMm);
            for (var row = 1; row < RowCount; row++) Line(x, heightMm * row / RowCount - MarkMm / 2, x, heightMm * row / RowCount + MarkMm / 2);
        }
        for (var row = 1; row < RowCount; row++)
        {
            var y = heightMm * row / RowCount;
            Line(MarkFromEdgeMm, y, MarkFromEdgeMm + MarkMm, y);
            Line(widthMm - MarkFromEdgeMm - MarkMm, y, widthMm - MarkFromEdgeMm, y);
            for (var column = 1; column < ColumnCount; column++) Line(widthMm * column / ColumnCount - MarkMm / 2, y, widthMm * column / ColumnCount + MarkMm / 2, y);
        }
    }
}
