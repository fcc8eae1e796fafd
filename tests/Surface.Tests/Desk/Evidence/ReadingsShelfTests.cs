using Microsoft.Extensions.Logging.Abstractions;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Storage;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class ReadingsShelfTests(DemoFolder demo)
{
    [Fact]
    public async Task Read_NothingChanged_IsTheSameObject() => await OnDemoAsync(async (store, classes) =>
    {
        using var shelf = new ReadingsShelf(store, TimeProvider.System);
        var first = await ReadAsync(shelf, classes[0]);
        Assert.True(first.View.HasEntries);
        Assert.Same(first, await ReadAsync(shelf, classes[0]));
        Assert.NotSame(first, await ReadAsync(shelf, classes[1]));
        Assert.Equal(2, shelf.ClassCount);
    });

    [Fact]
    public async Task Read_ManyAtOnce_ShareOneAnswer() => await OnDemoAsync(async (store, classes) =>
    {
        using var shelf = new ReadingsShelf(store, TimeProvider.System);
        var all = await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => Task.Run(async () =>
        {
            var readings = await ReadAsync(shelf, classes[0]);
            return (Readings: readings, readings.View, readings.Chances, readings.Foresight);
        })));
        Assert.Single(all.Distinct());
    });

    [Fact]
    public async Task Read_EntryFromAnotherProgram_HasIt() => await OnDemoAsync(async (store, classes) =>
    {
        using var shelf = new ReadingsShelf(store, TimeProvider.System);
        var before = await ReadAsync(shelf, classes[0]);
        var (record, other) = (before.Records[^1], await ReadAsync(shelf, classes[1]));
        var pupil = record.Pupils[0];
        await WriteChoiceAsync(store, record, pupil);

        var after = await ReadAsync(shelf, classes[0]);

        Assert.Equal(before.View.Pupils.Single(p => p.PupilId == pupil.Id).SetCount + 1, after.View.Pupils.Single(p => p.PupilId == pupil.Id).SetCount);
        Assert.Same(before.Records[0], after.Records[0]);
        Assert.Same(other, await ReadAsync(shelf, classes[1]));
    });

    [Fact]
    public async Task ErasePupil_OnTheDesk_LeavesNothingOfThemOnTheShelf() => await OnDemoAsync(async (store, classes) =>
    {
        using var shelf = new ReadingsShelf(store, TimeProvider.System);
        var desk = new DeskSchool(store, TimeProvider.System, shelf, NullLogger<DeskSchool>.Instance);
        await desk.LoadAsync();
        var erased = (await ReadAsync(shelf, classes[0])).View.Pupils[0].PupilId;
        await ReadAsync(shelf, classes[1]);

        await desk.ErasePupilAsync(erased);

        Assert.Equal(0, shelf.ClassCount);
        var after = await ReadAsync(shelf, classes[0]);
        Assert.DoesNotContain(after.View.Pupils, p => p.PupilId == erased);
        Assert.DoesNotContain(after.Records.SelectMany(r => r.Entries), e => e.PupilId == erased);
    });

    [Fact]
    public async Task ErasePupil_ByAnotherProgram_IsNotShownAgain() => await OnDemoAsync(async (store, classes) =>
    {
        using var shelf = new ReadingsShelf(store, TimeProvider.System);
        var erased = (await ReadAsync(shelf, classes[0])).View.Pupils[0].PupilId;
        await store.ErasePupilAsync(classes[0].SchoolId, erased);
        Assert.DoesNotContain((await ReadAsync(shelf, classes[0])).Records.SelectMany(r => r.Entries), e => e.PupilId == erased);
    });

    [Fact]
    public async Task Read_MoreThanThereIsRoomFor_LetsGoOfTheOneNotAskedForLongest() => await OnDemoAsync(async (store, classes) =>
    {
        using var shelf = new ReadingsShelf(store, TimeProvider.System) { MostEntryCount = 1 };
        var first = await ReadAsync(shelf, classes[0]);
        Assert.Same(first, await ReadAsync(shelf, classes[0]));
        await ReadAsync(shelf, classes[1]);
        Assert.Equal(1, shelf.ClassCount);
        Assert.NotSame(first, await ReadAsync(shelf, classes[0]));
    });

    [Fact]
    public async Task Read_NobodyAsksForAWhile_LetsGo() => await OnDemoAsync(async (store, classes) =>
    {
        var clock = new HandClock();
        using var shelf = new ReadingsShelf(store, clock);
        await ReadAsync(shelf, classes[0]);
        clock.GoOn(ReadingsShelf.KeptFor - TimeSpan.FromSeconds(1));
        Assert.Equal(1, shelf.ClassCount);
        clock.GoOn(TimeSpan.FromSeconds(1));
        Assert.Equal(0, shelf.ClassCount);
    });

    private static Task<UnitReadings> ReadAsync(ReadingsShelf shelf, SchoolClass taught) => shelf.ReadAsync(taught.SchoolId, taught.Id);

    // A set that nobody has written: one more than there were.
    private static async Task WriteChoiceAsync(IStore store, LessonRecord record, Pupil pupil)
    {
        var task = record.Sheet!.Content.Tasks[0];
        var recorder = new Recorder(record.School.Id, record.Lesson.Id, EntrySource.Floor, "tablet-1", TimeProvider.System, record.Entries);
        await store.AppendEntriesAsync(record.School.Id, [recorder.Put(pupil.Id, task.TaskId, 9, null, new Choice(task.Levels[0].Id))!]);
    }

    private async Task OnDemoAsync(Func<SchoolStore, IReadOnlyList<SchoolClass>, Task> test)
    {
        using var folder = await demo.CopyAsync();
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var school = (await store.ListSchoolsAsync()).Single();
        await test(store, await store.ListClassesAsync(school.Id));
    }

    /// <summary>A clock that goes on when told to; its timers ring each time.</summary>
    private sealed class HandClock : TimeProvider
    {
        private readonly List<(TimerCallback Ring, object? State)> _timers = [];
        private long _ticks;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => _ticks;

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            _timers.Add((callback, state));
            return new Timer();
        }

        public void GoOn(TimeSpan by)
        {
            _ticks += by.Ticks;
            foreach (var (ring, state) in _timers) ring(state);
        }

        private sealed class Timer : ITimer
        {
            public bool Change(TimeSpan dueTime, TimeSpan period) => true;

            public void Dispose()
            {
            }

            public ValueTask DisposeAsync() => ValueTask.CompletedTask;
        }
    }
}
