using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Paper;

/// <summary>The task sheets of a lesson, one for each pupil, ready to print.</summary>
public static class TaskSheetPages
{
    private const int MostSpareCount = 60;

    /// <summary>The pages of all sheets, pupil by pupil.</summary>
    /// <param name="record">The lesson, with its frozen sheet. What a policy or a restriction rules out is not on that pupil's page.</param>
    /// <param name="options">Paper, language, and how many sheets without a name to add.</param>
    /// <returns>
    /// By the pupil's label in the language's own order, then by code; the sheets without a name last, with what the policy allows.
    /// A task is a page, or more where its words are long. Empty for a class without pupils and no spare sheets.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Spare sheets are 0 to 60.</exception>
    public static IReadOnlyList<PrintedPage> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("A task sheet is printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        if (options.SpareCount is < 0 or > MostSpareCount)
            throw new ArgumentOutOfRangeException(nameof(options), options.SpareCount, "Spare sheets are 0 to 60.");

        var style = new SheetStyle(PageFrame.Of(options.Size), new PaperWords(options.Language));
        var sheets = new PupilSheets(record, sheet.Content, style);
        return
        [
            .. Labels.InOrder(record.Pupils, options.Language).SelectMany(sheets.Of),
            .. Enumerable.Range(1, options.SpareCount).SelectMany(sheets.Spare),
        ];
    }
}
