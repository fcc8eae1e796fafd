using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper.Cards;

/// <summary>A card for each task of a lesson, to lie or stand where it is practised.</summary>
public static class StationCardPages
{
    private const double BorderMm = 12;

    // Smaller than this on half a page, the cards take a page each.
    private const double HalfPageLeastPt = 13;

    /// <summary>The cards' pages, in the order of the sheet's tasks.</summary>
    /// <param name="record">The lesson, with its frozen sheet. Levels that the policy rules out are not on a card.</param>
    /// <param name="options">Paper, language, and how large the cards are.</param>
    /// <returns>
    /// Half a page a card, two on a page, unless a page each is asked for or one card's words would be smaller than 13 pt. Levels stand without numbers:
    /// pupils' own sheets may count other levels.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task.</exception>
    public static IReadOnlyList<Scene> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("Station cards are printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        var paper = PageFrame.Of(options.Size);
        var (words, type) = (new PaperWords(options.Language), CardScale.TypeOf(options));
        var tasks = sheet.Content.Tasks.Select(task => CardContent.Of(task, record)).ToList();

        List<TaskCard> Cards(Func<int, Area> place) => [.. tasks.Select((t, i) => new TaskCard(t, place(i).Inside(BorderMm), words, type, CardScale.Card))];
        var halves = Cards(i => new Area(0, i % 2 * paper.HeightMm / 2, paper.WidthMm, paper.HeightMm / 2));
        if (options.CardSize == CardSize.HalfPage && halves.All(c => c.Largest() is { SizePt: >= HalfPageLeastPt }))
            return Tinted([.. halves.Chunk(2).Select((pair, i) => Page(pair, paper.WidthMm, paper.HeightMm, i * 2))]);
        var wholes = Cards(_ => new Area(0, 0, paper.HeightMm, paper.WidthMm));
        return Tinted([.. wholes.Select((card, i) => Page([card], paper.HeightMm, paper.WidthMm, i))]);

        Scene Page(IReadOnlyList<TaskCard> cards, double widthMm, double heightMm, int first)
        {
            var sketch = new Sketch(type);
            foreach (var card in cards) card.DrawOn(sketch);
            if (heightMm > widthMm) sketch.Add(new Line(0, heightMm / 2, widthMm, heightMm / 2, Sketch.HairlineMm, Tone.Faint, IsDashed: true));
            var names = string.Join(", ", tasks.Skip(first).Take(cards.Count).Select(t => t.Title));
            return new Scene(widthMm, heightMm, sketch.Shapes, new CardWords(options.Language).Of("StationDescription", names));
        }

        IReadOnlyList<Scene> Tinted(IReadOnlyList<Scene> pages) => options.IsCream ? [.. pages.Select(p => Cream.Of(new PrintedPage(p, [])).Scene)] : pages;
    }
}
