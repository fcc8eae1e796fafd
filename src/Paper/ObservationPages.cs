using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;

namespace Slantwise.Paper;

/// <summary>The teacher's form for what was seen of each pupil's cues, ready to be read back.</summary>
public static class ObservationPages
{
    /// <summary>The form's pages, task by task.</summary>
    /// <param name="record">The lesson, with its frozen sheet.</param>
    /// <param name="options">Paper and language; what is for pupils is passed over.</param>
    /// <returns>
    /// A row a pupil, by label in the language's own order, then by code; which pupil a row is stands in the kept layout. Empty for a class without pupils.
    /// A task without cues has no page.
    /// </returns>
    /// <exception cref="ArgumentException">The lesson has no frozen sheet, or its sheet has no task.</exception>
    public static IReadOnlyList<PrintedPage> Of(LessonRecord record, PaperOptions options)
    {
        if (record.Sheet is not { Content.Tasks.Count: > 0 } sheet)
            throw new ArgumentException("An observation sheet is printed from a lesson's frozen sheet with at least one task; this lesson has none.", nameof(record));
        if (record.Pupils.Count == 0) return [];
        var form = new ObservationForm(
            record, sheet.Content, PageFrame.Of(options.Size), new PaperWords(options.Language), [.. Labels.InOrder(record.Pupils, options.Language)]);
        return form.Pages();
    }
}
