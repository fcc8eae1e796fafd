using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Nodes;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Host.Sync;

public sealed class SyncTests(DemoFolder demo)
{
    [Fact]
    public async Task Lesson_FromJoiningToLeaving_KeepsWhatWasSent()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var (_, joined, _) = await floor.PostAsync("join", new JoinRequest("tablet-1", FloorDeviceKind.Pupil, floor.Lesson.Code));
        var answer = joined.As<JoinAnswer>();
        Assert.Equal(floor.Record.Pupils.Select(p => p.Label), answer.Pupils.Select(p => p.Label));
        var (status, claimed, _) = await floor.PostAsync("claim", new ClaimRequest([answer.Pupils[0].PupilId]), answer.Token);
        Assert.Equal(200, status);
        Assert.Equal(answer.Pupils[0].Label, claimed.As<LessonBundle>().Pupils.Single().Label);

        var entry = floor.Trial("tablet-1", 0);
        var (_, taken, _) = await floor.SendAsync(answer.Token, entry);
        Assert.Equal([entry.Id], taken.As<BatchAnswer>().TakenIds);
        var (left, state, _) = await floor.PostAsync("leave", null, answer.Token);
        Assert.Equal(200, left);
        Assert.Empty(state!["pupilIds"]!.AsArray());
        await using var store = await floor.StoreAsync();
        Assert.Equal(entry.Id, Assert.Single(await store.ListEntriesAsync(floor.Record.School.Id, floor.Lesson.LessonId)).Id);
        Assert.NotNull((await store.FindFloorDeviceAsync(floor.Record.School.Id, floor.Lesson.LessonId, "tablet-1"))!.LeftAt);
    }

    [Fact]
    public async Task Bundle_ForABrowserThatTakesGzip_IsTheSamePackedAndNotModifiedEither()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var token = await floor.PupilAsync("tablet-1", 0);
        async Task<(HttpResponseMessage Answer, byte[] Bytes)> AskAsync(string? coding, string? tag = null)
        {
            using var request = OpenFloor.Request(HttpMethod.Get, "/sync/bundle", null, token);
            if (coding is not null) request.Headers.TryAddWithoutValidation("Accept-Encoding", coding);
            if (tag is not null) request.Headers.TryAddWithoutValidation("If-None-Match", tag);
            var answer = await floor.Served.Client.SendAsync(request, TestContext.Current.CancellationToken);
            return (answer, await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        }

        var (plain, packed, refused) = (await AskAsync(null), await AskAsync("gzip, deflate, br"), await AskAsync("gzip;q=0"));
        Assert.Equal(["gzip"], packed.Answer.Content.Headers.ContentEncoding);
        Assert.Empty(plain.Answer.Content.Headers.ContentEncoding);
        Assert.Empty(refused.Answer.Content.Headers.ContentEncoding);
        using var unpacked = new MemoryStream();
        await using (var unpacking = new GZipStream(new MemoryStream(packed.Bytes), CompressionMode.Decompress)) await unpacking.CopyToAsync(unpacked, TestContext.Current.CancellationToken);
        Assert.Equal(plain.Bytes, unpacked.ToArray());
        Assert.NotEqual(plain.Answer.Headers.ETag, packed.Answer.Headers.ETag);
        Assert.Equal(304, (int)(await AskAsync("gzip, deflate, br", packed.Answer.Headers.ETag!.ToString())).Answer.StatusCode);
    }

    [Fact]
    public async Task Bundle_AskedAgain_IsNotModifiedUntilARestrictionChanges()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var token = await floor.PupilAsync("tablet-1", 0);
        var first = await floor.AskAsync(HttpMethod.Get, "/sync/bundle", token: token);
        var tag = first.Headers.ETag!.ToString();
        Assert.Equal(304, (await floor.AskAsync(HttpMethod.Get, "/sync/bundle", token: token, tag: tag)).Status);

        await using var store = await floor.StoreAsync();
        foreach (var demand in Enum.GetValues<BodyDemand>())
        {
            await store.SaveRestrictionAsync(new Restriction
            {
                SchoolId = floor.Record.School.Id, Id = EntryId.New(TimeProvider.System), PupilId = floor.Record.Pupils[0].Id, Without = demand,
            });
        }
        var restrictions = (await store.ListRestrictionsAsync(floor.Record.School.Id)).Where(r => r.PupilId == floor.Record.Pupils[0].Id).ToList();
        var second = await floor.AskAsync(HttpMethod.Get, "/sync/bundle", token: token, tag: tag);
        Assert.Equal(200, second.Status);
        Assert.NotEqual(tag, second.Headers.ETag!.ToString());
        Assert.Equal(
            floor.Record.Sheet!.Content.Tasks.Select(t => Offer.LevelsFor(t.Levels, floor.Record.School.Policy, restrictions, floor.Record.Lesson.Date).Select(l => l.Id)),
            second.Body.As<LessonBundle>().Pupils.Single().Offers.Select(o => o.LevelIds));
    }

    [Fact]
    public async Task Entries_OneThatCannotBeRead_IsRefusedBesideTheOthers()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var token = await floor.PupilAsync("tablet-1", 0);
        var (good, bad) = (floor.Trial("tablet-1", 0), floor.Trial("tablet-1", 0, 2));
        JsonArray entries = [.. new[] { bad, good, bad with { Id = EntryId.New(TimeProvider.System) }, bad with { Id = EntryId.New(TimeProvider.System) } }.Select(e => JsonSerializer.SerializeToNode(e, EntryJson.Options))];
        entries[0]!["fact"]!["kind"] = "dance";
        entries[2]!["colour"] = "red";
        entries[3]!.AsObject().Remove("deviceId");
        var (status, body, _) = await floor.PostAsync("entries", new JsonObject { ["entries"] = entries, ["unsentCount"] = 4 }.ToJsonString(), token, "es");
        Assert.Equal(200, status);
        var answer = body.As<BatchAnswer>();
        Assert.Equal([good.Id], answer.TakenIds);
        Assert.Equal(3, answer.Refused.Count);
        Assert.All(answer.Refused, r => Assert.Equal("EntryUnreadable", r.Reason));
        Assert.All(answer.Refused, r => Assert.Contains("no se puede leer", r.Text));
    }

    [Fact]
    public async Task Teacher_OrdersDevicesAndLesson_ForAll()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var (tablet, teacher) = (await floor.PupilAsync("tablet-1", 0), await floor.JoinAsync("phone", FloorDeviceKind.Teacher));
        var (_, devices, _) = await floor.PostAsync("devices/tablet-1", new DeviceOrder("Blue", IsLocked: true, IsFreed: true), teacher);
        var seen = devices.As<IReadOnlyList<DeviceSeen>>().Single(d => d.DeviceId == "tablet-1");
        Assert.Equal(("Blue", true, 0), (seen.Name, seen.IsLocked, seen.PupilIds.Count));
        var (_, lesson, _) = await floor.PostAsync("lesson", new LessonOrder(IsStopped: true), teacher);
        Assert.NotNull(lesson!["stoppedAt"]);
        var (_, code, _) = await floor.PostAsync("code", null, teacher);
        Assert.NotEqual(floor.Lesson.Code, code.As<CodeAnswer>().Code);
        var (_, answer, _) = await floor.SendAsync(tablet, floor.Trial("tablet-1", 0));
        var state = answer.As<BatchAnswer>();
        Assert.Single(state.TakenIds);
        Assert.Equal(("Blue", true, 0), (state.State.DeviceName, state.State.IsLocked, state.State.PupilIds.Count));
        Assert.NotNull(state.State.StoppedAt);
    }

    [Fact]
    public async Task Tablets_AfterTheProgramStartsAnew_GoOnWithTheirTokens()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var token = await floor.PupilAsync("tablet-1", 0);
        await floor.Served.KillAsync();
        await using var again = await ServedHost.StartAsync(folder: floor.Folder.FullPath);
        using var request = OpenFloor.Request(HttpMethod.Post, "/sync/entries", new EntryBatch([floor.Trial("tablet-1", 0)], 1), token);
        using var answer = await again.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(200, (int)answer.StatusCode);
    }
}
