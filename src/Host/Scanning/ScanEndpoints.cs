using System.Text.Json;
using Microsoft.AspNetCore.Http.Features;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Scans;
using Slantwise.Host.Printing;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Host.Scanning;

/// <summary>Photographed sheets: sending them, and the pictures kept of them.</summary>
internal static class ScanEndpoints
{
    private const string Lines = "application/x-ndjson";

    public static void MapScans(this WebApplication app)
    {
        // Made with the program and not with the first pile: what one that was killed left behind goes now.
        app.Services.GetRequiredService<UploadFolder>();
        app.MapPost("/scans/upload", UploadAsync);
        app.MapGet("/scans/{scanId:guid}/pictures/{key}", async (Guid scanId, string key, DeskSchool desk, HttpContext http) =>
        {
            await desk.LoadAsync(http.RequestAborted);
            return desk.HasSchool ? Picture(await PictureAsync(scanId, key, desk, http.RequestAborted)) : Results.NotFound();
        });
        app.MapGet("/scans/kept/{lessonId:guid}/{pupilId:guid}/{key}", async (Guid lessonId, Guid pupilId, string key, DeskSchool desk, HttpContext http) =>
        {
            await desk.LoadAsync(http.RequestAborted);
            if (!desk.HasSchool || SheetField.FromKey(key) is not { } field) return Results.NotFound();
            var isWords = field.Kind is SheetFieldKind.OwnWords or SheetFieldKind.Because;
            if (isWords && !desk.School.Pictures.KeepsWords) return Results.NotFound();
            return Picture(await desk.Store.FindPictureAsync(desk.SchoolId, new PictureKey(lessonId, pupilId, key), http.RequestAborted));
        });
    }

    private static async Task UploadAsync(DeskSchool desk, UploadFolder folder, PileReading reading, UploadLimits limits, HttpContext http)
    {
        var cancel = http.RequestAborted;
        await desk.LoadAsync(cancel);
        if (!desk.HasSchool)
        {
            http.Response.Redirect("/");
            return;
        }
        // Each file has its own limit and there is one on their number; the program's own would cut a pile of photos off.
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size) size.MaxRequestBodySize = limits.MaxFileCount * limits.MaxByteCount;
        var lessonId = Guid.TryParse(http.Request.Query["lesson"], out var lesson) ? lesson : (Guid?)null;
        if (lessonId is { } asked && await desk.Store.FindLessonAsync(desk.SchoolId, asked, cancel) is null)
        {
            await NoticePage.LessonMissing().ExecuteAsync(http);
            return;
        }
        var pileId = Guid.TryParse(http.Request.Query["pile"], out var pile) ? pile : Guid.NewGuid();
        var isFollowed = http.Request.Headers.Accept.ToString().Contains(Lines, StringComparison.OrdinalIgnoreCase);
        var files = await folder.TakeAsync(http.Request, cancel);
        try
        {
            var text = isFollowed ? await PileText.LoadAsync(desk, cancel) : null;
            if (isFollowed) http.Response.ContentType = Lines + "; charset=utf-8";
            await foreach (var line in reading.ReadAsync(desk.SchoolId, pileId, lessonId, http.Request.Query["again"] == "1", files, cancel))
            {
                if (text is null) continue;
                await http.Response.WriteAsync(JsonSerializer.Serialize(new
                {
                    kind = JsonNamingPolicy.CamelCase.ConvertName(line.Kind.ToString()),
                    text = text.Sentence(line),
                    isUntold = line.IsUntold,
                }) + "\n", cancel);
                await http.Response.Body.FlushAsync(cancel);
            }
        }
        finally
        {
            UploadFolder.Remove(files);
        }
        if (isFollowed) return;
        http.Response.StatusCode = StatusCodes.Status303SeeOther;
        http.Response.Headers.Location = (lessonId is { } to ? $"/lessons/{to}/scans" : "/scans") + $"?pile={pileId:N}";
    }

    // A box that came into question only later was never cut out: then the page, which is kept as long as anything of it waits.
    private static async Task<byte[]?> PictureAsync(Guid scanId, string key, DeskSchool desk, CancellationToken cancel)
    {
        var review = new ScanReview(desk.Store, desk.SchoolId, desk.Clock);
        return await review.PictureAsync(scanId, key, cancel) ?? await review.PictureAsync(scanId, ScanPicture.Photo, cancel);
    }

    // Pieces of children's sheets: no copy is to stay in a browser's store, and nothing but a picture is to be seen in them.
    private static IResult Picture(byte[]? bytes) => bytes is null ? Results.NotFound() : new PictureAnswer(bytes);
}
