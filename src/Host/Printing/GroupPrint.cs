using Microsoft.Net.Http.Headers;
using Slantwise.Desk;
using Slantwise.Host.Words;
using Slantwise.Paper;
using Slantwise.Paper.LessonPages;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;

namespace Slantwise.Host.Printing;

/// <summary>The list of a lesson's groups on paper. It needs no sheet.</summary>
internal static class GroupPrint
{
    public static void MapGroupPrint(this WebApplication app) => app.MapGet("/print/lessons/{id:guid}/groups.pdf", PdfAsync);

    private static async Task<IResult> PdfAsync(Guid id, DeskSchool desk, HttpContext http)
    {
        await desk.LoadAsync(http.RequestAborted);
        if (!desk.HasSchool || await LessonRecord.LoadAsync(desk.Store, desk.SchoolId, id, http.RequestAborted) is not { } record) return NoticePage.LessonMissing();
        var options = PaperQuery.Of(http.Request.Query);
        var pages = GroupListPages.Of(record, await GroupList.LoadAsync(desk.Store, record, http.RequestAborted), options);
        if (pages.Count == 0) return NoticePage.NoGroups(id);
        using var pdf = new MemoryStream();
        PdfWriter.Write(
            pages, string.Join(" · ", HostWords.In(options.Language, "TitleOfGroups"), record.Class.Name, HostWords.Day(record.Lesson.Date, options.Language)), options.Language, pdf);
        var disposition = new ContentDispositionHeaderValue("inline");
        disposition.SetHttpFileName(LessonPrint.FileName(record, HostWords.Say("FileOfGroups")) + ".pdf");
        http.Response.Headers.ContentDisposition = disposition.ToString();
        return Results.Bytes(pdf.ToArray(), "application/pdf");
    }
}
