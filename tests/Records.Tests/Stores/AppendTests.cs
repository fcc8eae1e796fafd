using Slantwise.Records.Entries;

namespace Slantwise.Records.Tests.Stores;

public sealed class AppendTests
{
    [Theory, EachDatabase]
    public async Task Append_SameEntriesTwice_ChangesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1), sample.Trial(2)]);
        var before = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);

        var altered = sample.Trial(2) with { Fact = new Presence(false), DeviceId = "another" };
        var outcome = await store.AppendEntriesAsync(sample.Id, [sample.Trial(3), altered, sample.Trial(1)]);

        Assert.Equal([sample.Trial(3).Id], outcome.AddedIds);
        Assert.Equal(2, outcome.AlreadyKnownCount);
        var after = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
        Assert.Equal(before, after.Take(2));
        Assert.Equal(3, after.Count);
    }

    [Theory, EachDatabase]
    public async Task Append_NoEntries_AddsNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var outcome = await test.Store.AppendEntriesAsync(SampleSchool.IdOf(1), []);
        Assert.Empty(outcome.AddedIds);
        Assert.Equal(0, outcome.AlreadyKnownCount);
    }

    [Theory, EachDatabase]
    public async Task Append_OneEntryWithoutItsPlace_AddsNothingOfTheBatch(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var nowhere = SampleSchool.IdOf(9);
        foreach (var (wrong, word) in new[]
        {
            (sample.Trial(3) with { LessonId = nowhere }, "lesson"),
            (sample.Trial(3) with { PupilId = nowhere }, "pupil"),
            (sample.Trial(3) with { SchoolId = nowhere }, "another school"),
            (sample.Trial(1) with { TrialNumber = 9 }, "Two entries"),
        })
        {
            var refused = await Assert.ThrowsAsync<ArgumentException>(
                () => store.AppendEntriesAsync(sample.Id, [sample.Trial(1), sample.Trial(2), wrong]));
            Assert.Contains(word, refused.Message);
            Assert.Contains("Nothing was added", refused.Message);
            Assert.Empty(await store.ListEntriesAsync(sample.Id, sample.Lesson.Id));
        }
    }

    [Theory, EachDatabase]
    public async Task List_AfterSeveralBatches_KeepsTheOrderReceivedWhateverTheClocksSay(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(9), sample.Trial(2)]);
        // The laptop's clock is put right: back by a day.
        test.Clock.Now -= TimeSpan.FromDays(1);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(7)]);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(2), sample.Trial(1)]);

        var listed = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
        Assert.Equal([9, 2, 7, 1], listed.Select(e => e.TrialNumber!.Value));
        Assert.True(listed[2].ReceivedAt < listed[1].ReceivedAt, "The time received is what the clock said.");
    }

    [Theory, EachDatabase]
    public async Task Append_Corrections_KeepTheCorrectedAndHoldTheLast(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var slot = (Pupil: sample.Pupils[0].Id, Task: sample.Task.Id);
        foreach (var level in new[] { 0, 1, 0 })
        {
            var recorder = new Recorder(sample.Id, sample.Lesson.Id, EntrySource.Desk, "desk", test.Clock, await store.ListEntriesAsync(sample.Id, sample.Lesson.Id));
            await store.AppendEntriesAsync(sample.Id, [recorder.Put(slot.Pupil, slot.Task, 1, null, new Choice(sample.Task.Levels[level].Id))!]);
        }

        var log = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
        Assert.Equal([null, log[0].Id, log[1].Id], log.Select(e => e.SupersedesId));
        Assert.Equal([1, 2, 3], log.Select(e => e.DeviceSequence));
        Assert.Equal([log[2]], EntryLog.Current(log));
    }

    [Theory, EachDatabase]
    public async Task Append_FromEightAtOnce_LosesNone(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        // Half through another store on the same data, as a second program would write.
        var second = await test.OpenAgainAsync();
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(writer => Task.Run(async () =>
        {
            var mine = writer % 2 == 0 ? store : second;
            var added = new List<Guid>();
            for (var batch = 0; batch < 12; batch++)
            {
                // Neighbouring writers send half of their entries twice.
                var numbers = Enumerable.Range(0, 6).Select(i => (writer * 12 + batch) * 3 + i);
                added.AddRange((await mine.AppendEntriesAsync(sample.Id, numbers.Select(n => sample.Trial(n, n % 4)).ToList())).AddedIds);
            }
            return added;
        })));

        var listed = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
        var sent = Enumerable.Range(0, 7 * 36 + 11 * 3 + 6).Select(n => sample.Trial(n, n % 4)).ToList();
        Assert.Equal(sent, listed.Select(e => e with { ReceivedAt = null }).OrderBy(e => e.Id));
        // Each entry was reported as new to exactly one of its senders.
        Assert.Equal(sent.Select(e => e.Id), outcomes.SelectMany(ids => ids).Order());
    }

    [Theory, EachDatabase]
    public async Task List_WhileOthersAppend_NeverSkipsAnEntryThatComesLater(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var writers = Task.WhenAll(Enumerable.Range(0, 4).Select(writer => Task.Run(async () =>
        {
            for (var i = 0; i < 25; i++) await store.AppendEntriesAsync(sample.Id, [sample.Trial(writer * 100 + i)]);
        })));
        IReadOnlyList<Entry> seen = [];
        while (seen.Count < 100)
        {
            if (writers.IsFaulted) await writers;
            var now = await store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
            Assert.Equal(seen, now.Take(seen.Count));
            seen = now;
        }
        await writers;
    }
}
