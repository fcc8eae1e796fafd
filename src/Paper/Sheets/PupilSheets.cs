using Slantwise.Paper.Forms;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>Makes the pages of one lesson's sheets, a pupil at a time.</summary>
internal sealed class PupilSheets(LessonRecord record, SheetContent content, PaperOptions options)
{
    private readonly FormCoder _coder = new(record);
    private readonly SheetStyle _style = Roomiest(record, content, options);

    /// <summary>One pupil's pages.</summary>
    public IReadOnlyList<PrintedPage> Of(Pupil pupil) => Pages(pupil, SheetCode.TagOf(pupil.Id));

    /// <summary>The pages of a sheet without a name.</summary>
    /// <param name="number">Its number among those printed for the lesson, from 1.</param>
    public IReadOnlyList<PrintedPage> Spare(int number) => Pages(null, number);

    // The same style for everybody, whatever one pupil is offered: the first in which the class's sheet takes fewest pages.
    private static SheetStyle Roomiest(LessonRecord record, SheetContent content, PaperOptions options) => SheetStyle.Of(options)
        .Select(style => (Style: style, Count: new PupilSheet(record, content, style, null, 1).PageCount))
        .Aggregate((a, b) => b.Count < a.Count ? b : a).Style;

    private List<PrintedPage> Pages(Pupil? pupil, long tag)
    {
        var sheet = new PupilSheet(record, content, _style, pupil, (int)(pupil is null ? tag : 0));
        return [.. sheet.Pages().Select((page, i) => _coder.Of(_style.Frame, page.Sketch, tag, pupil is not null, i + 1, page.Description))];
    }
}
