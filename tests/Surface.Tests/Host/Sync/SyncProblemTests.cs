using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Surface.Tests.Host.Sync;

public sealed partial class SyncProblemTests(DemoFolder demo)
{
    [Fact]
    public async Task Problems_EachCodeOnce_AnswersItsStatusAndWordsInTheReadersLanguage()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var (pupil, unclaimed) = (await floor.PupilAsync("tablet-1", 0), await floor.JoinAsync("tablet-2"));
        var teacher = await floor.JoinAsync("phone", FloorDeviceKind.Teacher);
        var aDayAgo = new SetClock(TimeProvider.System.GetUtcNow().AddDays(-1));
        var documented = Documented();
        var met = new HashSet<string>();

        async Task ExpectAsync(string code, string path, object? body, string? token = null, HttpMethod? method = null)
        {
            var (status, problem, _) = await floor.AskAsync(method ?? HttpMethod.Post, "/sync/" + path, body, token);
            var (_, spanish, _) = await floor.AskAsync(method ?? HttpMethod.Post, "/sync/" + path, body, token, "es-ES");
            Assert.True(problem?["code"]?.GetValue<string>() == code, $"{path}: {status} {problem}, not {code}");
            Assert.Equal(documented[code], status);
            Assert.Equal(status, problem!["status"]!.GetValue<int>());
            Assert.NotEqual(problem["title"]!.GetValue<string>(), spanish!["title"]!.GetValue<string>());
            Assert.Equal(token is not null && code != "tokenInvalid", problem["state"] is not null);
            met.Add(code);
        }

        JoinRequest Join(string device, FloorDeviceKind kind = FloorDeviceKind.Pupil, string? code = null, string? ticket = null) => new(device, kind, code, ticket);
        await ExpectAsync("codeUnknown", "join", Join("x", code: "222222"));
        await ExpectAsync("ticketInvalid", "join", Join("x", ticket: "nonsense"));
        await ExpectAsync("ticketInvalid", "join", Join("x", ticket: floor.Ticket(FloorDeviceKind.Pupil, aDayAgo)));
        await ExpectAsync("ticketInvalid", "join", Join("x", FloorDeviceKind.Teacher, ticket: floor.Ticket(FloorDeviceKind.Board)));
        await ExpectAsync("notAllowed", "join", Join("x", FloorDeviceKind.Teacher, code: floor.Lesson.Code));
        await ExpectAsync("deviceIdTaken", "join", Join("tablet-1", FloorDeviceKind.Station, code: floor.Lesson.Code));
        await ExpectAsync("bodyUnreadable", "join", """{"deviceId":"x","kind":"dragon"}""");
        await ExpectAsync("bodyUnreadable", "join", "not json");
        await ExpectAsync("bodyUnreadable", "entries", """{"entries":[{}],"unsentCount":0}""", pupil);
        await ExpectAsync("bodyTooLarge", "entries", new string(' ', 512 * 1024 + 1), pupil);
        await ExpectAsync("batchTooLarge", "entries", $$"""{"entries":[{{string.Join(',', Enumerable.Repeat("0", 201))}}],"unsentCount":0}""", pupil);
        await ExpectAsync("tokenInvalid", "entries", new EntryBatch([], 0));
        await ExpectAsync("tokenInvalid", "entries", new EntryBatch([], 0), "nonsense");
        // A ticket is no token: it is signed for something else.
        await ExpectAsync("tokenInvalid", "entries", new EntryBatch([], 0), floor.Ticket(FloorDeviceKind.Teacher));
        await ExpectAsync("pupilCount", "claim", new ClaimRequest([]), pupil);
        await ExpectAsync("pupilCount", "bundle", null, unclaimed, HttpMethod.Get);
        await ExpectAsync("pupilUnknown", "claim", new ClaimRequest([Guid.Empty]), pupil);
        await ExpectAsync("notAllowed", "lesson", new LessonOrder(IsStopped: true), pupil);
        await ExpectAsync("notAllowed", "devices/tablet-1", new DeviceOrder(IsLocked: true), pupil);
        await ExpectAsync("notAllowed", "code", null, pupil);
        await ExpectAsync("deviceUnknown", "devices/nobody", new DeviceOrder(IsLocked: true), teacher);
        await ExpectAsync("nameLength", "devices/tablet-1", new DeviceOrder(Name: new string('n', 41)), teacher);

        await using var store = await floor.StoreAsync();
        await store.SaveLessonAsync(floor.Record.Lesson with { SheetId = null, SheetVersion = null });
        await ExpectAsync("lessonWithoutSheet", "bundle", null, pupil, HttpMethod.Get);
        await store.SaveLessonAsync(floor.Record.Lesson);
        Assert.Equal(200, (await floor.PostAsync("lesson", new LessonOrder(IsClosed: true), teacher)).Status);
        await ExpectAsync("lessonClosed", "join", Join("x", code: floor.Lesson.Code));
        await ExpectAsync("lessonClosed", "claim", new ClaimRequest([floor.Record.Pupils[0].Id]), pupil);
        await ExpectAsync("lessonClosed", "code", null, teacher);

        // Those that need a clock, a crowd or a disk of their own have their own tests.
        string[] elsewhere = ["codeExpired", "tooManyTries", "tooOften", "lessonFull", "busy"];
        Assert.Equal(documented.Keys.Except(elsewhere).Order(), met.Order());
    }

    [Fact]
    public async Task Join_WithACodeThatHasRunOut_SaysSo()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        await using (var store = await floor.StoreAsync()) await store.SaveFloorLessonAsync(floor.Lesson with { CodeUntil = floor.Lesson.OpenedAt });
        var (status, body, _) = await floor.PostAsync("join", new JoinRequest("x", FloorDeviceKind.Pupil, floor.Lesson.Code));
        Assert.Equal((410, "codeExpired"), (status, body!["code"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Join_ByManyWrongCodes_IsStoppedAfterAClassCouldHaveMistyped()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        // Together, since on a slow machine tries that come one by one are given back as fast as they are used up.
        async Task<string[]> TryAsync(int count) => await Task.WhenAll(Enumerable.Range(0, count).Select(async _ =>
            (await floor.PostAsync("join", new JoinRequest("x", FloorDeviceKind.Pupil, "222222"))).Body!["code"]!.GetValue<string>()));
        Assert.All(await TryAsync(60), code => Assert.Equal("codeUnknown", code));
        var more = await TryAsync(55);
        Assert.Contains("tooManyTries", more);
        Assert.Subset(new HashSet<string> { "codeUnknown", "tooManyTries" }, more.ToHashSet());
    }

    [Fact]
    public async Task Join_AClassOfThirtyAtOnceBehindOneAddress_AllJoinAndAFloodDoesNot()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        await Task.WhenAll(Enumerable.Range(1, 30).Select(i => floor.JoinAsync($"tablet-{i}")));
        var flood = await Task.WhenAll(Enumerable.Range(1, 150).Select(_ => floor.PostAsync("join", new JoinRequest("tablet-1", FloorDeviceKind.Pupil, floor.Lesson.Code))));
        var refused = flood.First(f => f.Status == 429);
        Assert.Equal("tooOften", refused.Body!["code"]!.GetValue<string>());
        Assert.NotNull(refused.Headers.RetryAfter);
    }

    [Fact]
    public async Task Entries_WhileAnotherProgramHoldsTheFile_AreAnsweredBusyAndKeptByNobody()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var token = await floor.PupilAsync("tablet-1", 0);
        var entry = floor.Trial("tablet-1", 0);
        await using (var connection = new SqliteConnection($"Data Source={floor.Folder.At("slantwise.db")};Pooling=False"))
        {
            await connection.OpenAsync(TestContext.Current.CancellationToken);
            await using var hold = connection.CreateCommand();
            hold.CommandText = "BEGIN IMMEDIATE";
            await hold.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
            var (status, body, headers) = await floor.SendAsync(token, entry);
            Assert.Equal((503, "busy"), (status, body!["code"]!.GetValue<string>()));
            Assert.NotNull(headers.RetryAfter);
        }
        await using var store = await floor.StoreAsync();
        Assert.Empty(await store.ListEntriesAsync(floor.Record.School.Id, floor.Lesson.LessonId));
        Assert.Equal(200, (await floor.SendAsync(token, entry)).Status);
    }

    [Fact]
    public void Codes_InTheDocs_AreThoseInTheCode() => Assert.Equal(
        Enum.GetNames<FloorProblemKind>().Select(System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName).Order(), Documented().Keys.Order());

    private static Dictionary<string, int> Documented([System.Runtime.CompilerServices.CallerFilePath] string here = "")
    {
        var root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../../.."));
        return CodeRow().Matches(File.ReadAllText(Path.Combine(root, "docs/sync.md"))).ToDictionary(m => m.Groups[2].Value, m => int.Parse(m.Groups[1].Value, null));
    }

    [GeneratedRegex(@"^\| (\d{3}) \| `(\w+)` \|", RegexOptions.Multiline)]
    private static partial Regex CodeRow();
}
