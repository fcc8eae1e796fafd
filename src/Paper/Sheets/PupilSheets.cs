using Slantwise.Paper.Forms;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>Makes the pages of one lesson's sheets, a pupil at a time.</summary>
internal sealed class PupilSheets(LessonRecord record, SheetContent content, PaperOptions options)
{
    private const double SmallerFraction = 0.75;

    private readonly FormCoder _coder = new(record);
    private readonly SheetStyle _style = Roomiest(record, content, options);

    /// <summary>One pupil's pages.</summary>
    public IReadOnlyList<PrintedPage> Of(Pupil pupil) => Pages(pupil, SheetCode.TagOf(pupil.Id));

    /// <summary>The pages of a sheet without a name.</summary>
    /// <param name="number">Its number among those printed for the lesson, from 1.</param>
    public IReadOnlyList<PrintedPage> Spare(int number) => Pages(null, number);

    // The same style for everybody, whatever one pupil is offered: the first in which the class's sheet takes fewest pages, and of those in which it takes as many
    // the first in which a task done in a way of one's own takes fewest, so that nobody is singled out by a page more.
    private static SheetStyle Roomiest(LessonRecord record, SheetContent content, PaperOptions options)
    {
        var adapted = record.Pupils.Where(p => record.Adaptations.Any(a => a.PupilId == p.Id)).ToList();
        int Count(SheetStyle style, Pupil? pupil) => new PupilSheet(record, content, style, pupil, 1).PageCount;
        IReadOnlyList<SheetStyle> styles = SheetStyle.Of(options);
        // Smaller figures for the whole class are better than one sheet that is longer than the others.
        if (adapted.Count > 0) styles = [.. styles, styles[^1] with { FigureMm = styles[^1].FigureMm * SmallerFraction }];
        return styles
            .Select(style => (Style: style, Count: (Class: Count(style, null), Adapted: adapted.Select(p => Count(style, p)).DefaultIfEmpty().Max())))
            .Aggregate((a, b) => b.Count.CompareTo(a.Count) < 0 ? b : a).Style;
    }

    private List<PrintedPage> Pages(Pupil? pupil, long tag)
    {
        var sheet = new PupilSheet(record, content, _style, pupil, (int)(pupil is null ? tag : 0));
        return [.. sheet.Pages().Select((page, i) => _coder.Of(_style.Frame, page.Sketch, tag, pupil is not null, i + 1, page.Description))];
    }
}
