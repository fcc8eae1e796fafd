using Microsoft.Net.Http.Headers;
using Slantwise.Desk;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;

namespace Slantwise.Host.Printing;

/// <summary>The desk's links to paper.</summary>
internal static class PrintEndpoints
{
    public static void MapPrints(this WebApplication app)
    {
        foreach (var kind in Enum.GetValues<PrintKind>())
        {
            var name = kind.ToString().ToLowerInvariant();
            app.MapGet($"/print/lessons/{{id:guid}}/{name}.pdf", (Guid id, DeskSchool desk, HttpContext http) => PdfAsync(id, kind, desk, http));
            app.MapGet($"/print/lessons/{{id:guid}}/{name}/preview", (Guid id, DeskSchool desk, HttpContext http) => PreviewAsync(id, kind, desk, http));
        }
        app.MapGet("/print/lessons/{id:guid}/sheets/{page:int}.svg", (Guid id, int page, DeskSchool desk, HttpContext http) => SvgAsync(id, page, desk, http));
    }

    private static async Task<IResult> PdfAsync(Guid lessonId, PrintKind kind, DeskSchool desk, HttpContext http)
    {
        if (await LoadAsync(lessonId, desk, http) is not { } record) return NoticePage.LessonMissing();
        if (record.Sheet is null) return NoticePage.NotPrepared(lessonId);
        var options = PaperQuery.Of(http.Request.Query);
        var pages = await PagesAsync(record, kind, options, desk, http);
        if (pages.Count == 0) return NoticePage.NoPupils(record.Class.Id);
        await LessonPrint.KeepLayoutsAsync(desk.Store, record, pages, http.RequestAborted);

        var disposition = new ContentDispositionHeaderValue("inline");
        disposition.SetHttpFileName(LessonPrint.FileName(record, kind));
        http.Response.Headers.ContentDisposition = disposition.ToString();
        return Results.Bytes(LessonPrint.Pdf(pages, record, kind, options.Language), "application/pdf");
    }

    private static async Task<IResult> SvgAsync(Guid lessonId, int page, DeskSchool desk, HttpContext http)
    {
        if (await LoadAsync(lessonId, desk, http) is not { } record) return NoticePage.LessonMissing();
        if (record.Sheet is null) return NoticePage.NotPrepared(lessonId);
        var pages = LessonPrint.Pages(record, LessonPlans.None, PrintKind.Sheets, PaperQuery.Of(http.Request.Query));
        if (page < 1 || page > pages.Count) return NoticePage.PageMissing(lessonId, page, pages.Count);
        return Results.Text(SvgWriter.Write(pages[page - 1].Scene), "image/svg+xml");
    }

    // What is looked at is not printed: nothing is kept.
    private static async Task<IResult> PreviewAsync(Guid lessonId, PrintKind kind, DeskSchool desk, HttpContext http)
    {
        if (await LoadAsync(lessonId, desk, http) is not { } record) return NoticePage.LessonMissing();
        if (record.Sheet is null) return NoticePage.NotPrepared(lessonId);
        var options = PaperQuery.Of(http.Request.Query);
        return PreviewPage.Of([.. (await PagesAsync(record, kind, options, desk, http)).Select(p => p.Scene)], kind, http.Request);
    }

    private static async Task<IReadOnlyList<PrintedPage>> PagesAsync(LessonRecord record, PrintKind kind, PaperOptions options, DeskSchool desk, HttpContext http)
    {
        var plans = await LessonAround.LoadAsync(desk.Store, record, kind, http.RequestAborted);
        return LessonPrint.Pages(record, plans, kind, options);
    }

    private static async Task<LessonRecord?> LoadAsync(Guid lessonId, DeskSchool desk, HttpContext http)
    {
        await desk.LoadAsync(http.RequestAborted);
        return desk.HasSchool ? await LessonRecord.LoadAsync(desk.Store, desk.SchoolId, lessonId, http.RequestAborted) : null;
    }
}
