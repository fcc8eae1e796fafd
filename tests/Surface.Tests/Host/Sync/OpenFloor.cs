using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.DataProtection;
using Slantwise.Desk.Pages.Floor;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Surface.Tests.Host.Sync;

/// <summary>A copy of the demo school with its coming lesson open for devices, served by the real program.</summary>
public sealed class OpenFloor : IAsyncDisposable
{
    private readonly Dictionary<string, long> _sequences = [];

    private OpenFloor(TempFolder folder, ServedHost served, FloorLesson lesson, LessonRecord record) =>
        (Folder, Served, Lesson, Record) = (folder, served, lesson, record);

    public TempFolder Folder { get; }
    public ServedHost Served { get; }
    public FloorLesson Lesson { get; }
    public LessonRecord Record { get; }

    /// <summary>Opens the lesson and serves it.</summary>
    /// <param name="demo">The demo school.</param>
    /// <param name="more">Further arguments of <c>serve</c>.</param>
    public static async Task<OpenFloor> StartAsync(DemoFolder demo, params IReadOnlyList<string> more)
    {
        var folder = await demo.CopyAsync();
        FloorLesson lesson;
        LessonRecord record;
        await using (var store = await LessonOfDemo.OpenAsync(folder))
        {
            var school = (await store.ListSchoolsAsync()).Single();
            var coming = (await store.ListLessonsAsync(school.Id))[^1];
            await using var hub = new FloorHub(store, TimeProvider.System, RandomNumberGenerator.GetInt32, "test");
            lesson = await hub.OpenAsync(school.Id, coming.Id);
            record = await LessonOfDemo.LoadAsync(store, coming.Id);
        }
        return new OpenFloor(folder, await ServedHost.StartAsync(folder: folder.FullPath, more: more), lesson, record);
    }

    /// <summary>The records, beside the program that is served.</summary>
    public Task<SqliteStore> StoreAsync() => LessonOfDemo.OpenAsync(Folder);

    /// <summary>A ticket as the desk makes it.</summary>
    /// <param name="kind">What it joins a device as.</param>
    /// <param name="clock">The desk's clock.</param>
    /// <param name="lessonId">The lesson; none for the one that is open.</param>
    public string Ticket(FloorDeviceKind kind, TimeProvider? clock = null, Guid? lessonId = null) => new FloorTickets(Keys(), clock ?? TimeProvider.System)
        .Of(Record.School.Id, lessonId ?? Lesson.LessonId, kind);

    /// <summary>The keys of the program that is served.</summary>
    public IDataProtectionProvider Keys() =>
        DataProtectionProvider.Create(new DirectoryInfo(Folder.At("keys")), protection => protection.SetApplicationName("slantwise"));

    /// <summary>Asks the program.</summary>
    public async Task<(int Status, JsonNode? Body, HttpResponseHeaders Headers)> AskAsync(
        HttpMethod method, string path, object? body = null, string? token = null, string language = "en", string? tag = null)
    {
        using var request = Request(method, path, body, token, language);
        if (tag is not null) request.Headers.TryAddWithoutValidation("If-None-Match", tag);
        using var answer = await Served.Client.SendAsync(request, TestContext.Current.CancellationToken);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        return ((int)answer.StatusCode, text.StartsWith('{') || text.StartsWith('[') ? JsonNode.Parse(text) : null, answer.Headers);
    }

    public static HttpRequestMessage Request(HttpMethod method, string path, object? body, string? token, string language = "en")
    {
        var request = new HttpRequestMessage(method, path);
        if (body is not null)
            request.Content = new StringContent(body as string ?? JsonSerializer.Serialize(body, body.GetType(), EntryJson.Options), Encoding.UTF8, "application/json");
        if (token is not null) request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {token}");
        request.Headers.AcceptLanguage.ParseAdd(language);
        return request;
    }

    public Task<(int Status, JsonNode? Body, HttpResponseHeaders Headers)> PostAsync(string path, object? body, string? token = null, string language = "en") =>
        AskAsync(HttpMethod.Post, "/sync/" + path, body, token, language);

    /// <summary>Joins a device, by code, or by ticket for teacher and board.</summary>
    /// <returns>Its token.</returns>
    public async Task<string> JoinAsync(string deviceId, FloorDeviceKind kind = FloorDeviceKind.Pupil)
    {
        var isByTicket = kind is FloorDeviceKind.Teacher or FloorDeviceKind.Board;
        var (status, body, _) = await PostAsync("join", new JoinRequest(deviceId, kind, isByTicket ? null : Lesson.Code, isByTicket ? Ticket(kind) : null));
        Assert.True(status == 200, $"{status}: {body}");
        return body!["token"]!.GetValue<string>();
    }

    /// <summary>Joins a pupil's device that serves the n-th pupil.</summary>
    public async Task<string> PupilAsync(string deviceId, int pupil)
    {
        var token = await JoinAsync(deviceId);
        Assert.Equal(200, (await PostAsync("claim", new ClaimRequest([Record.Pupils[pupil].Id]), token)).Status);
        return token;
    }

    /// <summary>A trial that a device writes.</summary>
    public Entry Trial(string deviceId, int pupil, int trial = 1) => Entry(deviceId, pupil, new Trial(true)) with { TrialNumber = trial };

    /// <summary>The next entry of a device about the first set of the first task.</summary>
    public Entry Entry(string deviceId, int pupil, EntryFact fact)
    {
        lock (_sequences)
        {
            return new()
            {
                SchoolId = Record.School.Id, Id = EntryId.New(TimeProvider.System), LessonId = Lesson.LessonId, PupilId = Record.Pupils[pupil].Id,
                TaskId = Record.Sheet!.Content.Tasks[0].TaskId, SetNumber = 1, Fact = fact, Source = EntrySource.Floor,
                DeviceId = deviceId, DeviceSequence = _sequences[deviceId] = _sequences.GetValueOrDefault(deviceId) + 1, MadeAt = TimeProvider.System.GetUtcNow(),
            };
        }
    }

    /// <summary>Sends a batch.</summary>
    public Task<(int Status, JsonNode? Body, HttpResponseHeaders Headers)> SendAsync(string token, params IReadOnlyList<Entry> entries) =>
        PostAsync("entries", new EntryBatch(entries, entries.Count), token);

    public async ValueTask DisposeAsync()
    {
        await Served.DisposeAsync();
        Folder.Dispose();
    }
}
