using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Tests.Stores;
using static Slantwise.Records.Tests.Floor.FloorHubTests;
using static Slantwise.Records.Tests.Floor.OpenLesson;

namespace Slantwise.Records.Tests.Floor;

public sealed class GroupCommitTests
{
    [Theory, EachDatabase]
    public async Task Take_WhileTheStoreWrites_AcknowledgesNobodyAndThenSharesOneCommit(Database database)
    {
        HeldStore held = null!;
        await using var open = await OpenLesson.OpenAsync(database, store => Held(store, out held));
        var tablets = new List<FloorMember>();
        for (var i = 0; i < 8; i++) tablets.Add(await open.PupilAsync($"t{i}", i % 3));
        Task<Records.Floor.Contracts.BatchAnswer>[] waiting;
        using (held.Hold())
        {
            var first = TakeAsync(tablets[0], open.Entry("t0", 0, new Trial(true), 1));
            while (held.EntryCounts.Count == 0) await Task.Delay(5, TestContext.Current.CancellationToken);
            waiting = [first, .. tablets.Skip(1).Select((t, i) => TakeAsync(t, open.Entry($"t{i + 1}", (i + 1) % 3, new Trial(true), 1)))];
            await Task.Delay(50, TestContext.Current.CancellationToken);
            Assert.All(waiting, w => Assert.False(w.IsCompleted));
            Assert.Empty(await open.KeptAsync());
        }
        var answers = await Task.WhenAll(waiting);
        Assert.All(answers, a => Assert.Single(a.TakenIds));
        Assert.Equal([1, 7], held.EntryCounts);
        Assert.Equal(8, (await open.KeptAsync()).Count);
    }

    [Fact]
    public async Task Take_WhenTheStoreFails_IsBusyForEachAndLaterTakesAll()
    {
        HeldStore held = null!;
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite, store => Held(store, out held));
        var (one, two) = (await open.PupilAsync("t", 1), await open.PupilAsync("u", 2));
        var (first, second) = (open.Entry("t", 1, new Trial(true), 1), open.Entry("u", 2, new Trial(true), 1));
        held.Failure = new IOException("No space left on device");
        await RefusedAsync(FloorProblemKind.Busy, () => TakeAsync(one, first));
        await RefusedAsync(FloorProblemKind.Busy, () => TakeAsync(two, second));
        Assert.Empty(await open.KeptAsync());
        held.Failure = null;
        Assert.Equal([first.Id], (await TakeAsync(one, first)).TakenIds);
        Assert.Equal([second.Id], (await TakeAsync(two, second)).TakenIds);
    }

    [Fact]
    public async Task Take_TheSameEntryTwiceAtOnce_IsKeptOnceAndAcknowledgedTwice()
    {
        HeldStore held = null!;
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite, store => Held(store, out held));
        var tablet = await open.PupilAsync("t", 1);
        var entry = open.Entry("t", 1, new Trial(true), 1);
        Task<Records.Floor.Contracts.BatchAnswer>[] waiting;
        using (held.Hold()) waiting = [TakeAsync(tablet, entry), TakeAsync(tablet, entry), TakeAsync(tablet, entry)];
        Assert.All(await Task.WhenAll(waiting), a => Assert.Equal([entry.Id], a.TakenIds));
        Assert.Single(await open.KeptAsync());
    }

    [Fact]
    public async Task Take_WhoeverGaveUpWaiting_HoldsNobodyUp()
    {
        await using var open = await OpenLesson.OpenAsync(Database.Sqlite);
        var tablet = await open.PupilAsync("t", 1);
        using var gone = new CancellationTokenSource();
        await gone.CancelAsync();
        await Record.ExceptionAsync(() => tablet.TakeAsync(new([open.Entry("t", 1, new Trial(true), 1)], 1), System.Globalization.CultureInfo.InvariantCulture, gone.Token));
        Assert.Single((await TakeAsync(tablet, open.Entry("t", 1, new Trial(true), 2))).TakenIds);
    }

    private static IStore Held(IStore store, out HeldStore held)
    {
        (var proxy, held) = HeldStore.Over(store);
        return proxy;
    }
}
