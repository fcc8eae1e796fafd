using Slantwise.Engines.Drawing;
using Slantwise.Paper.Cards;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.RiskPages;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;

namespace Slantwise.Paper.Pack;

/// <summary>All that a substitute needs for a lesson, in one document: a note, the lesson page, the risk page, the class list, station cards and the pupils' sheets.</summary>
public static class LessonPack
{
    /// <summary>The pack's pages, numbered through.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="plans">What is known around it.</param>
    /// <param name="options">Paper, language and how the pupils' sheets are printed. On both sides of the paper, every part begins on a sheet of its own.</param>
    /// <returns>Pupils' sheets are the same forms as printed alone, and are read the same way. Empty for a class without pupils and no spare sheets.</returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task; large print two on a page.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Spare sheets are 0 to 60, numbered from 1 to 9 999.</exception>
    public static IReadOnlyList<PrintedPage> Of(LessonRecord record, LessonPlans plans, PaperOptions options)
    {
        var sheets = TaskSheetPages.Of(record, options);
        if (sheets.Count == 0) return [];
        var words = new CardWords(options.Language);
        (string Name, IReadOnlyList<PrintedPage> Pages)[] parts =
        [
            (words["PartLesson"], Pages(LessonPage.Of(record, plans, options))),
            .. plans.Risk is null ? [] : new[] { RiskPart(RiskPage.Of(record, plans.Risk, options.Language), options) },
            (words["PartClass"], Pages([.. ClassSheetPages.Of(record, options).Select(s => Tinted(s, options))])),
            (words["PartStations"], Pages(StationCardPages.Of(record, options))),
            (words["PartSheets"], sheets),
        ];
        // The note is one page, so that where the parts begin is known before it is written.
        var cover = new CoverPage(record, options);
        var padded = parts.Select(p => Padded(p.Pages, options)).ToList();
        var first = Padded(Pages([Tinted(cover.Of([]), options)]), options).Count + 1;
        var listed = new List<(string, int)>();
        for (var i = 0; i < parts.Length; first += padded[i++].Count) listed.Add((parts[i].Name, first));
        List<PrintedPage> all = [.. Padded(Pages([Tinted(cover.Of(listed), options)]), options), .. padded.SelectMany(p => p)];
        return [.. all.Select((page, i) => PackNumber.On(page, i + 1, all.Count, words))];
    }

    private static IReadOnlyList<PrintedPage> Pages(IReadOnlyList<Scene> scenes) => [.. scenes.Select(s => new PrintedPage(s, []))];

    private static (string Name, IReadOnlyList<PrintedPage> Pages) RiskPart(RiskPage risk, PaperOptions options) => (risk.Say("Title"), Pages(RiskPagePages.Of(risk, options)));

    private static Scene Tinted(Scene scene, PaperOptions options) => options.IsCream ? Cream.Of(new PrintedPage(scene, [])).Scene : scene;

    private static IReadOnlyList<PrintedPage> Padded(IReadOnlyList<PrintedPage> pages, PaperOptions options)
    {
        if (!options.IsTwoSided || pages.Count % 2 == 0) return pages;
        var like = pages[^1].Scene;
        return [.. pages, new PrintedPage(new Scene(like.WidthMm, like.HeightMm, [], new PaperWords(options.Language)["EmptyDescription"]), [])];
    }
}
