using System.Text.Json.Nodes;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Host.Sync;

public sealed class EventStreamTests(DemoFolder demo)
{
    [Fact]
    public async Task Events_ForAPupil_SayTheStateAndTheStopSignal()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var (token, teacher) = (await floor.PupilAsync("tablet-1", 0), await floor.JoinAsync("phone", FloorDeviceKind.Teacher));
        using var stream = await ReaderAsync(floor, token);
        var (name, state) = await NextAsync(stream);
        Assert.Equal("state", name);
        Assert.Null(state["stoppedAt"]);
        await floor.PostAsync("lesson", new LessonOrder(IsStopped: true), teacher);
        (name, state) = await NextAsync(stream);
        Assert.Equal("state", name);
        Assert.NotNull(state["stoppedAt"]);
    }

    [Fact]
    public async Task Events_MoreStreamsThanADeviceNeeds_AreRefusedAndOneThatEndedMakesRoom()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var token = await floor.PupilAsync("tablet-1", 0);
        var first = await ReaderAsync(floor, token);
        using var second = await ReaderAsync(floor, token);
        var (status, body, _) = await floor.AskAsync(HttpMethod.Get, "/sync/events", token: token);
        Assert.Equal((429, "tooOften"), (status, body!["code"]!.GetValue<string>()));
        first.Dispose();
        using var again = await EventuallyAsync(floor, token);
    }

    [Fact]
    public async Task Events_ForTheTeacher_SayEntriesOfDevicesAndOfTheDeskAndARemovedLevelAtOnce()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        var (sheet, record) = (floor.Record.Sheet!.Content, floor.Record);
        var pupil = Enumerable.Range(0, record.Pupils.Count).First(p => Removed(floor, p) is not null);
        var token = await floor.PupilAsync("tablet-1", pupil);
        using var stream = await ReaderAsync(floor, await floor.JoinAsync("phone", FloorDeviceKind.Teacher));
        var (heard, questions) = (new HashSet<Guid>(), new List<LiveQuestion>());

        var removed = floor.Entry("tablet-1", pupil, new Choice(Removed(floor, pupil)!.Value));
        Assert.Equal(200, (await floor.SendAsync(token, removed)).Status);
        await using (var store = await floor.StoreAsync())
        {
            var typed = floor.Trial("desk", 0) with { Source = EntrySource.Desk };
            await store.AppendEntriesAsync(record.School.Id, [typed]);
            while (!heard.Contains(removed.Id) || !heard.Contains(typed.Id) || !questions.Any(q => q.IsSafety && q.PupilId == record.Pupils[pupil].Id))
            {
                var (name, data) = await NextAsync(stream);
                if (name != "news") continue;
                var news = data.As<TeacherNews>();
                heard.UnionWith(news.Entries.Select(e => e.Id));
                questions = news.Questions?.ToList() ?? questions;
            }
        }
        Assert.NotEmpty(sheet.Tasks);
    }

    [Fact]
    public async Task Serve_WithStreamsOpen_EndsOnRequest()
    {
        await using var floor = await OpenFloor.StartAsync(demo);
        using var stream = await ReaderAsync(floor, await floor.PupilAsync("tablet-1", 0));
        await NextAsync(stream);
        Assert.Equal(0, await floor.Served.StopAsync());
    }

    private static Guid? Removed(OpenFloor floor, int pupil)
    {
        var (record, task) = (floor.Record, floor.Record.Sheet!.Content.Tasks[0]);
        var offered = Offer.LevelsFor(task.Levels, record.School.Policy, record.Restrictions.Where(r => r.PupilId == record.Pupils[pupil].Id), record.Lesson.Date);
        return task.Levels.Except(offered).FirstOrDefault()?.Id;
    }

    private static async Task<StreamReader> ReaderAsync(OpenFloor floor, string token)
    {
        var answer = await floor.Served.Client.SendAsync(
            OpenFloor.Request(HttpMethod.Get, "/sync/events", null, token), HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType?.MediaType);
        return new StreamReader(await answer.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken));
    }

    // The program notices that a stream has ended when it next writes to it, or when the connection closes.
    private static async Task<StreamReader> EventuallyAsync(OpenFloor floor, string token)
    {
        using var over = new CancellationTokenSource(HostProgram.Patience);
        while (true)
        {
            var answer = await floor.Served.Client.SendAsync(
                OpenFloor.Request(HttpMethod.Get, "/sync/events", null, token), HttpCompletionOption.ResponseHeadersRead, over.Token);
            if (answer.IsSuccessStatusCode) return new StreamReader(await answer.Content.ReadAsStreamAsync(over.Token));
            await Task.Delay(200, over.Token);
        }
    }

    private static async Task<(string Name, JsonNode Data)> NextAsync(StreamReader stream)
    {
        var name = "";
        while (await stream.ReadLineAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(HostProgram.Patience) is { } line)
        {
            if (line.StartsWith("event: ", StringComparison.Ordinal)) name = line["event: ".Length..];
            if (line.StartsWith("data: ", StringComparison.Ordinal)) return (name, JsonNode.Parse(line["data: ".Length..])!);
        }
        throw new EndOfStreamException("The stream ended.");
    }
}
