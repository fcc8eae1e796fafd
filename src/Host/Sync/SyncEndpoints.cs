using System.Data.Common;
using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.Net.Http.Headers;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Host.Sync;

/// <summary>What devices in a lesson ask the program. The agreement is in docs/sync.md.</summary>
internal static class SyncEndpoints
{
    public static void AddSync(this IServiceCollection services)
    {
        services.AddSingleton<FloorTokens>();
        services.AddSingleton<WrongCodes>();
        services.AddSyncLimits();
    }

    public static void MapSync(this WebApplication app)
    {
        app.UseRateLimiter();
        var sync = app.MapGroup("/sync");
        Map(sync.MapPost("/join", (HttpContext http) => DoAsync(http, JoinAsync)), SyncLimits.Join);
        Map(sync.MapPost("/claim", (HttpContext http) => DoAsync(http, ClaimAsync)));
        Map(sync.MapGet("/bundle", (HttpContext http) => DoAsync(http, BundleAsync)));
        Map(sync.MapPost("/entries", (HttpContext http) => DoAsync(http, EntriesAsync)));
        Map(sync.MapGet("/events", (HttpContext http) => DoAsync(http, EventStream.SendAsync)));
        Map(sync.MapPost("/leave", (HttpContext http) => DoAsync(http, LeaveAsync)));
        Map(sync.MapPost("/devices/{deviceId}", (HttpContext http) => DoAsync(http, OrderDeviceAsync)));
        Map(sync.MapPost("/lesson", (HttpContext http) => DoAsync(http, OrderLessonAsync)));
        Map(sync.MapPost("/code", (HttpContext http) => DoAsync(http, RenewCodeAsync)));

        static void Map(IEndpointConventionBuilder endpoint, string limit = SyncLimits.Device) => endpoint.RequireRateLimiting(limit);
    }

    // The face that turns failures into words for devices.
    private static async Task DoAsync(HttpContext http, Func<HttpContext, Task> work)
    {
        try
        {
            await work(http);
        }
        catch (FloorRefusal refusal) when (!http.Response.HasStarted)
        {
            if (refusal.Kind == FloorProblemKind.Busy) Log(http, refusal.InnerException ?? refusal);
            await FloorProblems.WriteAsync(http, refusal.Kind);
        }
        catch (Exception failure) when (IsOfTheStore(failure) && !http.RequestAborted.IsCancellationRequested && !http.Response.HasStarted)
        {
            Log(http, failure);
            await FloorProblems.WriteAsync(http, FloorProblemKind.Busy);
        }
        catch (OperationCanceledException) when (http.RequestAborted.IsCancellationRequested)
        {
            // Whoever asked has gone.
        }
    }

    private static async Task JoinAsync(HttpContext http)
    {
        var request = await SyncBody.ReadAsync<JoinRequest>(http);
        var services = http.RequestServices;
        var hub = services.GetRequiredService<FloorHub>();
        var member = request.Ticket is { } text
            ? services.GetRequiredService<FloorTickets>().Read(text) is { } ticket && ticket.Kind == request.Kind
                ? await hub.JoinAsync(ticket.SchoolId, ticket.LessonId, request, http.RequestAborted)
                : throw new FloorRefusal(FloorProblemKind.TicketInvalid)
            : await JoinByCodeAsync(http, hub, request);
        await AnswerAsync(http, member.Joined(services.GetRequiredService<FloorTokens>().Of(member)));
    }

    private static async Task<FloorMember> JoinByCodeAsync(HttpContext http, FloorHub hub, JoinRequest request)
    {
        var (wrong, place) = (http.RequestServices.GetRequiredService<WrongCodes>(), SyncLimits.PlaceOf(http));
        wrong.Require(place);
        var desk = http.RequestServices.GetRequiredService<DeskSchool>();
        await desk.LoadAsync(http.RequestAborted);
        try
        {
            return desk.HasSchool ? await hub.JoinByCodeAsync(desk.SchoolId, request, http.RequestAborted) : throw new FloorRefusal(FloorProblemKind.CodeUnknown);
        }
        catch (FloorRefusal refusal) when (refusal.Kind == FloorProblemKind.CodeUnknown)
        {
            wrong.Count(place);
            throw;
        }
    }

    private static async Task ClaimAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        await member.ClaimAsync(await SyncBody.ReadAsync<ClaimRequest>(http), http.RequestAborted);
        member.See();
        await AnswerBundleAsync(http, member);
    }

    private static async Task BundleAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        member.See();
        await AnswerBundleAsync(http, member);
    }

    private static async Task AnswerBundleAsync(HttpContext http, FloorMember member)
    {
        var bundle = await member.BundleAsync(CultureInfo.CurrentUICulture, http.RequestAborted);
        var bytes = JsonSerializer.SerializeToUtf8Bytes(bundle, EntryJson.Options);
        var isPacked = http.Request.GetTypedHeaders().AcceptEncoding.Any(a => a.Quality is not 0 && a.Value.Equals("gzip", StringComparison.OrdinalIgnoreCase));
        var tag = new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes))[..32]}{(isPacked ? "gz" : "")}\"");
        http.Response.Headers.ETag = tag.ToString();
        http.Response.Headers.Vary = "Accept-Encoding, Accept-Language, Authorization";
        if (HttpMethods.IsGet(http.Request.Method) && http.Request.GetTypedHeaders().IfNoneMatch.Any(known => known.Compare(tag, useStrongComparison: false)))
        {
            http.Response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }
        http.Response.ContentType = "application/json; charset=utf-8";
        // Figures are most of it, and a fifth of their size when packed. Nothing in it opens anything: whoever counts its bytes on the way learns no key.
        if (isPacked)
        {
            http.Response.Headers.ContentEncoding = "gzip";
            bytes = Packed(bytes);
        }
        http.Response.ContentLength = bytes.Length;
        await http.Response.Body.WriteAsync(bytes, http.RequestAborted);
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var packing = new GZipStream(packed, CompressionLevel.Fastest)) packing.Write(bytes);
        return packed.ToArray();
    }

    private static async Task EntriesAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        var (batch, unread) = (await SyncBody.ReadAsync<SyncBatch>(http)).Read(CultureInfo.CurrentUICulture);
        var answer = await member.TakeAsync(batch, CultureInfo.CurrentUICulture, http.RequestAborted);
        await AnswerAsync(http, unread.Count == 0 ? answer : answer with { Refused = [.. answer.Refused, .. unread] });
    }

    private static async Task LeaveAsync(HttpContext http) =>
        await AnswerAsync(http, await (await SyncCaller.FindAsync(http)).LeaveAsync(http.RequestAborted));

    private static async Task OrderDeviceAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        member.RequireTeacher();
        var order = await SyncBody.ReadAsync<DeviceOrder>(http);
        await AnswerAsync(http, await member.OrderDeviceAsync((string)http.GetRouteValue("deviceId")!, order, http.RequestAborted));
    }

    private static async Task OrderLessonAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        member.RequireTeacher();
        await AnswerAsync(http, await member.OrderLessonAsync(await SyncBody.ReadAsync<LessonOrder>(http), http.RequestAborted));
    }

    private static async Task RenewCodeAsync(HttpContext http)
    {
        var member = await SyncCaller.FindAsync(http);
        var lesson = await http.RequestServices.GetRequiredService<FloorHub>().RenewCodeAsync(member, http.RequestAborted);
        await AnswerAsync(http, new CodeAnswer(lesson.Code, lesson.CodeUntil));
    }

    private static bool IsOfTheStore(Exception failure) => failure is DbException or IOException or TimeoutException || failure.InnerException is DbException or TimeoutException;

    private static Task AnswerAsync<T>(HttpContext http, T answer) => http.Response.WriteAsJsonAsync(answer, EntryJson.Options, http.RequestAborted);

    private static void Log(HttpContext http, Exception failure) =>
        http.RequestServices.GetRequiredService<ILogger<FloorHub>>().LogError(failure, "A device was asked to try again.");
}
