using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Tests.Stores;
using static Slantwise.Records.Tests.Floor.FloorHubTests;
using static Slantwise.Records.Tests.Floor.OpenLesson;

namespace Slantwise.Records.Tests.Floor;

public sealed class FloorNewsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    [Fact]
    public async Task Watch_OfAPupil_TellsTheStateAtOnceAndWhenItChanges()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var (tablet, other) = (await open.PupilAsync("t", 1), await open.PupilAsync("u", 2));
        using var watch = tablet.Watch();
        Assert.Null(watch.Take(English).State!.StoppedAt);
        Assert.True(watch.Take(English).IsEmpty);
        await open.Hub.OrderLessonAsync(open.School.Id, open.LessonId, new LessonOrder(IsStopped: true));
        Assert.True(await watch.WaitAsync(Patience, TestContext.Current.CancellationToken));
        Assert.NotNull(watch.Take(English).State!.StoppedAt);
        await open.Hub.OrderDeviceAsync(open.School.Id, open.LessonId, "u", new DeviceOrder(IsLocked: true));
        Assert.True(watch.Take(English).IsEmpty);
        await open.Hub.OrderDeviceAsync(open.School.Id, open.LessonId, "t", new DeviceOrder(IsLocked: true));
        var news = watch.Take(English);
        Assert.True(news.State!.IsLocked);
        Assert.Null(news.News);
    }

    [Fact]
    public async Task Watch_MoreThanADeviceNeeds_IsRefusedUntilOneEnds()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        var (one, two) = (tablet.Watch(), tablet.Watch());
        await RefusedAsync(FloorProblemKind.TooOften, () => Task.FromResult(tablet.Watch()));
        one.Dispose();
        tablet.Watch().Dispose();
        two.Dispose();
    }

    [Theory, EachDatabase]
    public async Task Watch_OfATeacher_TellsEntriesFromAnywhereOnce(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        var tablet = await open.PupilAsync("t", 1);
        var (before, after) = (open.Entry("t", 1, new Trial(true), 1), open.Entry("t", 1, new Trial(false), 2));
        await TakeAsync(tablet, before);
        using var watch = (await open.JoinAsync("phone", FloorDeviceKind.Teacher)).Watch();
        var heard = new List<Entry>();
        await HearAsync(open, watch, news => heard.AddRange(news.Entries), () => heard.Count >= 1);
        await TakeAsync(tablet, after);
        await HearAsync(open, watch, news => heard.AddRange(news.Entries), () => heard.Count >= 2);
        // From the desk of another program on the same data.
        var typed = open.School.Trial(3, pupil: 2) with { Source = EntrySource.Desk, DeviceId = "desk" };
        await (await open.Test.OpenAgainAsync()).AppendEntriesAsync(open.School.Id, [typed]);
        await HearAsync(open, watch, news => heard.AddRange(news.Entries), () => heard.Count >= 3);
        Assert.Equal([before.Id, after.Id, typed.Id], heard.Select(e => e.Id));
        Assert.All(heard, e => Assert.NotNull(e.ReceivedAt));
    }

    [Fact]
    public async Task Watch_OfATeacher_AsksAtOnceAboutALevelThatWasRemoved()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 0);
        using var watch = (await open.JoinAsync("phone", FloorDeviceKind.Teacher)).Watch();
        IReadOnlyList<LiveQuestion>? asked = null;
        await HearAsync(open, watch, news => asked = news.Questions ?? asked, () => asked is not null);
        // Landing is ruled out for the first pupil, and the second level lands.
        var answer = await TakeAsync(tablet, open.Entry("t", 0, new Choice(open.School.Task.Levels[1].Id)));
        Assert.Single(answer.TakenIds);
        Assert.Empty(answer.Refused);
        await HearAsync(open, watch, news => asked = news.Questions ?? asked, () => asked!.Count > 0, isClockRunning: false);
        var question = Assert.Single(asked!);
        Assert.True(question.IsSafety);
        Assert.Equal(open.School.Pupils[0].Id, question.PupilId);
        Assert.Contains("One-foot balance", question.Question + question.Reason);
    }

    [Fact]
    public async Task Watch_OfALockedTeacher_TellsTheStateAndNoMore()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        using var watch = (await open.JoinAsync("phone", FloorDeviceKind.Teacher)).Watch();
        await open.Hub.OrderDeviceAsync(open.School.Id, open.LessonId, "phone", new DeviceOrder(IsLocked: true));
        var news = watch.Take(English);
        Assert.True(news.State!.IsLocked);
        Assert.Null(news.News);
    }

    [Fact]
    public async Task Watch_OfATeacher_TellsWhatDevicesHaveStillToDeliver()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        using var watch = (await open.JoinAsync("phone", FloorDeviceKind.Teacher)).Watch();
        IReadOnlyList<DeviceSeen>? devices = null;
        await HearAsync(open, watch, news => devices = news.Devices ?? devices, () => devices is not null);
        await tablet.TakeAsync(new EntryBatch([open.Entry("t", 1, new Trial(true), 1)], 7), English);
        await HearAsync(open, watch, news => devices = news.Devices ?? devices, () => devices!.Single(d => d.DeviceId == "t").UnsentCount == 6);
        await tablet.LeaveAsync();
        await HearAsync(open, watch, news => devices = news.Devices ?? devices, () => devices!.Single(d => d.DeviceId == "t") is { HasLeft: true, UnsentCount: 0 });
    }

    [Fact]
    public async Task WatchHub_ByTheDesk_ShowsDevicesAsTheyJoin()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        await using var seen = open.Hub.WatchAsync(open.School.Id, open.LessonId, TestContext.Current.CancellationToken).GetAsyncEnumerator(TestContext.Current.CancellationToken);
        Assert.True(await seen.MoveNextAsync());
        Assert.Empty(seen.Current.Devices);
        await open.JoinAsync("t");
        Assert.True(await seen.MoveNextAsync());
        Assert.Equal("t", Assert.Single(seen.Current.Devices).DeviceId);
    }

    private static async Task HearAsync(OpenLesson open, FloorWatch watch, Action<TeacherNews> hear, Func<bool> isEnough, bool isClockRunning = true)
    {
        using var over = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        over.CancelAfter(Patience);
        while (true)
        {
            if (watch.Take(English).News is { } news) hear(news);
            if (isEnough()) return;
            await watch.WaitAsync(TimeSpan.FromMilliseconds(100), over.Token);
            if (isClockRunning) open.Clock.Now += TimeSpan.FromSeconds(1);
        }
    }
}
