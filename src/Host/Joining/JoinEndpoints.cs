using Microsoft.Net.Http.Headers;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Engines.Drawing;
using Slantwise.Host.Printing;
using Slantwise.Host.Words;
using Slantwise.Paper;
using Slantwise.Paper.Posters;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;

namespace Slantwise.Host.Joining;

/// <summary>How devices join an open lesson, as pictures for the desk and as a page for the wall.</summary>
internal static class JoinEndpoints
{
    private const double SymbolMm = 60;

    public static void MapJoining(this WebApplication app)
    {
        app.MapGet("/lessons/{id:guid}/floor/pupil.svg", (Guid id, FloorHub hub, FloorAddresses addresses, DeskSchool desk, HttpContext http) =>
            SymbolAsync(id, (at, lesson) => FloorLinks.Join(at, lesson.Code), hub, addresses, desk, http));
        app.MapGet("/lessons/{id:guid}/floor/teacher.svg", (Guid id, FloorHub hub, FloorAddresses addresses, FloorTickets tickets, DeskSchool desk, HttpContext http) =>
            SymbolAsync(id, (at, lesson) => FloorLinks.Teacher(at, tickets.Of(lesson.SchoolId, lesson.LessonId, FloorDeviceKind.Teacher)), hub, addresses, desk, http));
        app.MapGet("/print/lessons/{id:guid}/join.pdf", PosterAsync);
    }

    // A picture of its own, so that it is dark on white in a dark page, too: that is what cameras look for.
    private static async Task<IResult> SymbolAsync(Guid lessonId, Func<Uri, FloorLesson, string> link, FloorHub hub, FloorAddresses addresses, DeskSchool desk, HttpContext http)
    {
        if (await OpenAsync(lessonId, hub, desk, http) is not { } lesson) return Results.NotFound();
        return Results.Text(SvgWriter.Write(LinkSymbol.Of(link(At(addresses, http), lesson), SymbolMm, "")), "image/svg+xml");
    }

    private static async Task<IResult> PosterAsync(Guid id, FloorHub hub, FloorAddresses addresses, DeskSchool desk, HttpContext http)
    {
        var open = await OpenAsync(id, hub, desk, http);
        if (!desk.HasSchool || await LessonRecord.LoadAsync(desk.Store, desk.SchoolId, id, http.RequestAborted) is not { } record) return NoticePage.LessonMissing();
        if (open is null) return NoticePage.NotOpen(id);
        var (options, at) = (PaperQuery.Of(http.Request.Query), At(addresses, http));
        var page = JoinPoster.Of(
            new JoinInvitation(record.Class.Name, open.Code, FloorLinks.Join(at, open.Code), FloorLinks.Typed(at), TimeZoneInfo.ConvertTime(open.CodeUntil, desk.Clock.LocalTimeZone)), options);
        using var pdf = new MemoryStream();
        PdfWriter.Write([page], page.Description, options.Language, pdf);
        var disposition = new ContentDispositionHeaderValue("inline");
        disposition.SetHttpFileName(LessonPrint.FileName(record, HostWords.Say("FileOfJoin")) + ".pdf");
        http.Response.Headers.ContentDisposition = disposition.ToString();
        return Results.Bytes(pdf.ToArray(), "application/pdf");
    }

    // A lesson that has ended joins nobody: its code is not shown.
    private static async Task<FloorLesson?> OpenAsync(Guid lessonId, FloorHub hub, DeskSchool desk, HttpContext http)
    {
        await desk.LoadAsync(http.RequestAborted);
        var seen = desk.HasSchool ? await hub.FindAsync(desk.SchoolId, lessonId, http.RequestAborted) : null;
        return seen is { Lesson.ClosedAt: null } ? seen.Lesson : null;
    }

    private static Uri At(FloorAddresses addresses, HttpContext http) =>
        addresses.Chosen(new Uri($"{http.Request.Scheme}://{http.Request.Host}"), http.Request.Query["at"].ToString());
}
