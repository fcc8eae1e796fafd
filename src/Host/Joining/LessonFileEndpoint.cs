using System.Globalization;
using System.Text.Json;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Host.Printing;
using Slantwise.Host.Sync;
using Slantwise.Host.Words;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;

namespace Slantwise.Host.Joining;

/// <summary>Hands a lesson over as a file. Each file is a device that has joined: what it writes is taken as any device's.</summary>
internal static class LessonFileEndpoint
{
    // A form, since every file asked for is another device: an address that is only looked at must not make one.
    public static void MapLessonFile(this WebApplication app) => app.MapPost("/lessons/{id:guid}/floor/bundle.json", SaveAsync).DisableAntiforgery();

    private static async Task<IResult> SaveAsync(Guid id, FloorHub hub, FloorTokens tokens, DeskSchool desk, HttpContext http)
    {
        var cancel = http.RequestAborted;
        await desk.LoadAsync(cancel);
        if (!desk.HasSchool || await LessonRecord.LoadAsync(desk.Store, desk.SchoolId, id, cancel) is not { } record) return NoticePage.LessonMissing();
        if (record.Sheet is null || await hub.FindAsync(desk.SchoolId, id, cancel) is not { Lesson.ClosedAt: null }) return NoticePage.NotOpen(id);

        var form = http.Request.HasFormContentType ? await http.Request.ReadFormAsync(cancel) : FormCollection.Empty;
        var asked = form["pupil"].Select(text => Guid.TryParse(text, out var pupil) ? pupil : Guid.Empty).ToHashSet();
        var chosen = record.Pupils.Where(p => asked.Contains(p.Id)).ToList();
        var kind = chosen.Count switch { 1 => FloorDeviceKind.Pupil, 2 => FloorDeviceKind.Pair, _ => FloorDeviceKind.Station };
        IReadOnlyList<Guid> own = kind == FloorDeviceKind.Station ? [] : [.. chosen.Select(p => p.Id)];
        try
        {
            var member = await hub.JoinAsync(desk.SchoolId, id, new JoinRequest($"file-{Guid.NewGuid():N}", kind), cancel);
            if (own.Count > 0) await member.ClaimAsync(new ClaimRequest(own), cancel);
            // More than two share a tablet as a station does, which then knows nobody else.
            var bundle = LessonBundles.Of(chosen.Count > 2 ? record with { Pupils = chosen } : record, kind, own, CultureInfo.CurrentUICulture);
            var file = new LessonFile(tokens.Of(member), new LessonFileDevice(member.DeviceId, member.State.DeviceName, kind), bundle);
            var name = LessonPrint.FileName(record, $"{HostWords.Say("FileOfFloor")}-{member.State.DeviceName}".Replace(' ', '-'));
            return Results.File(JsonSerializer.SerializeToUtf8Bytes(file, EntryJson.Options), "application/json", name + ".json");
        }
        catch (FloorRefusal refusal)
        {
            return NoticePage.Refused(id, FloorText.Refused(refusal.Kind));
        }
    }
}
