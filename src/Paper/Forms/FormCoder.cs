using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;

namespace Slantwise.Paper.Forms;

/// <summary>Makes forms of the sketched pages of one lesson that has a sheet: frame, code and kept layout.</summary>
internal sealed class FormCoder(LessonRecord record)
{
    private readonly long _lessonTag = SheetCode.LessonTagOf(record.Lesson.Id, record.Sheet!.SheetId);

    /// <summary>A page of a pupil's sheet as a form that fills its page.</summary>
    /// <param name="frame">The page.</param>
    /// <param name="sketch">What is on it.</param>
    /// <param name="pupilTag">The pupil's tag, or the number of a sheet without a name; 0 for a sheet about several.</param>
    /// <param name="isNamed">Whether the pupil is known.</param>
    /// <param name="pageNumber">The page of the sheet, from 1.</param>
    /// <param name="description">What the page is, in a sentence.</param>
    /// <param name="rowTags">The pupils of an observation sheet's rows.</param>
    public PrintedPage Of(
        PageFrame frame, Sketch sketch, long pupilTag, bool isNamed, int pageNumber, string description, IReadOnlyList<long>? rowTags = null)
    {
        var kept = PrintedLayout.Of(record.School.Id, FormFrame.Of(frame, sketch), rowTags);
        var layout = kept.Form().Layout;
        var code = new SheetCode(_lessonTag, pupilTag, isNamed, record.Sheet!.Version, pageNumber, kept.Tag);
        Shape[] shapes = [.. FormFrame.Shapes(layout), CodeDrawing.Of(code.Write(record.School.Id), layout.Code), .. sketch.Shapes];
        return new PrintedPage(
            new Scene(frame.WidthMm, frame.HeightMm, shapes, description), [new PrintedForm(code, kept, layout, 0, 0, 1)]);
    }
}
