using System.Collections.Concurrent;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Surface.Tests.Host.Sync;

public sealed class KilledWhileSendingTests(DemoFolder demo)
{
    private const int DeviceCount = 6;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Serve_KilledWhileBatchesStream_KeepsEveryAcknowledgedEntryAndTakesTheRestAfterwards(int seed)
    {
        var random = new Random(seed);
        await using var floor = await OpenFloor.StartAsync(demo);
        var tokens = new string[DeviceCount];
        for (var d = 0; d < DeviceCount; d++) tokens[d] = await floor.PupilAsync($"tablet-{d}", d);
        var (sent, acknowledged) = (new ConcurrentBag<(int Device, Records.Entries.Entry Entry)>(), new ConcurrentBag<Guid>());
        var isTimeToKill = new TaskCompletionSource();
        var killAfterCount = random.Next(20, 120);

        // Each device sends its next batch once the last one was acknowledged, until nobody answers.
        var sending = Enumerable.Range(0, DeviceCount).Select(d => Task.Run(async () =>
        {
            var cut = new Random(seed * 100 + d);
            while (true)
            {
                var batch = Enumerable.Range(0, cut.Next(1, 6)).Select(i => floor.Trial($"tablet-{d}", d, (i % floor.Record.Sheet!.Content.TrialCount) + 1)).ToList();
                foreach (var entry in batch) sent.Add((d, entry));
                try
                {
                    var (status, body, _) = await floor.SendAsync(tokens[d], batch);
                    if (status == 429)
                    {
                        await Task.Delay(100);
                        continue;
                    }
                    if (status != 200) return;
                    foreach (var id in body.As<BatchAnswer>().TakenIds) acknowledged.Add(id);
                }
                catch (Exception failure) when (failure is HttpRequestException or IOException)
                {
                    return;
                }
                if (acknowledged.Count >= killAfterCount) isTimeToKill.TrySetResult();
            }
        })).ToArray();
        // A device that ends before its time has failed, and says why at the end.
        await Task.WhenAny(isTimeToKill.Task, Task.WhenAny(sending)).WaitAsync(HostProgram.Patience);
        await Task.Delay(random.Next(0, 30));
        await floor.Served.KillAsync();
        await Task.WhenAll(sending).WaitAsync(HostProgram.Patience);

        Assert.True(acknowledged.Count >= killAfterCount);
        await using (var store = await floor.StoreAsync())
        {
            var kept = (await store.ListEntriesAsync(floor.Record.School.Id, floor.Lesson.LessonId)).Select(e => e.Id).ToHashSet();
            Assert.Subset(kept, acknowledged.ToHashSet());
        }
        await using var again = await ServedHost.StartAsync(folder: floor.Folder.FullPath);
        foreach (var device in sent.GroupBy(s => s.Device))
        {
            foreach (var batch in device.Select(s => s.Entry).OrderBy(e => e.DeviceSequence).Chunk(EntryBatch.MostEntryCount))
            {
                using var request = OpenFloor.Request(HttpMethod.Post, "/sync/entries", new EntryBatch(batch, batch.Length), tokens[device.Key]);
                using var answer = await again.Client.SendAsync(request, TestContext.Current.CancellationToken);
                Assert.Equal(200, (int)answer.StatusCode);
            }
        }
        await using var after = await floor.StoreAsync();
        Assert.Equal(
            sent.Select(s => s.Entry.Id).Order(),
            (await after.ListEntriesAsync(floor.Record.School.Id, floor.Lesson.LessonId)).Select(e => e.Id).Order());
    }
}
