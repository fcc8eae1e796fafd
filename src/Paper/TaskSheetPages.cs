using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper;

/// <summary>The task sheets of a lesson, one for each pupil, ready to print.</summary>
public static class TaskSheetPages
{
    private const int MostSpareCount = 60;
    private const int MostSpareNumber = 9999;

    /// <summary>The pages of all sheets, pupil by pupil.</summary>
    /// <param name="record">The lesson, with its frozen sheet. What a policy or a restriction rules out is not on that pupil's page.</param>
    /// <param name="options">Paper, language, and how many sheets without a name to add.</param>
    /// <returns>
    /// By the pupil's label in the language's own order, then by code; the sheets without a name last, with what the policy allows.
    /// A task is a page, or more where its words are long. Empty for a class without pupils and no spare sheets.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task; large print two on a page.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Spare sheets are 0 to 60, numbered from 1 to 9 999.</exception>
    public static IReadOnlyList<PrintedPage> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("A task sheet is printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        if (options.SpareCount is < 0 or > MostSpareCount)
            throw new ArgumentOutOfRangeException(nameof(options), options.SpareCount, "Spare sheets are 0 to 60.");

        if (options.FirstSpareNumber is < 1 or > MostSpareNumber)
            throw new ArgumentOutOfRangeException(nameof(options), options.FirstSpareNumber, "Sheets without a name are numbered from 1 to 9 999.");
        if (options is { IsTwoUp: true, IsLargePrint: true })
            throw new ArgumentException("Large print is not printed at .707: two pages beside each other and large print exclude each other.", nameof(options));

        var sheets = new PupilSheets(record, sheet.Content, options);
        var words = new PaperWords(options.Language);
        var pages = new Sides(options, words["EmptyDescription"]).Of(
        [
            .. Labels.InOrder(record.Pupils, options.Language).Select(sheets.Of),
            .. Enumerable.Range(options.FirstSpareNumber, options.SpareCount).Select(sheets.Spare),
        ]);
        return options.IsCream ? [.. pages.Select(Cream.Of)] : pages;
    }
}
