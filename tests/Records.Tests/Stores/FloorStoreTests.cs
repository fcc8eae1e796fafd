using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class FloorStoreTests
{
    private static readonly DateTimeOffset Noon = new(2026, 9, 14, 12, 0, 0, TimeSpan.Zero);

    private static FloorLesson FloorOf(SampleSchool sample, string code = "K7PM4X") => new()
    {
        SchoolId = sample.Id, LessonId = sample.Lesson.Id, Code = code, CodeUntil = Noon.AddMinutes(20), OpenedAt = Noon, StoppedAt = Noon.AddMinutes(3),
        CountdownUntil = Noon.AddMinutes(4),
    };

    private static FloorDevice DeviceOf(SampleSchool sample, string id, string name, int[] pupils, int[] served) => new()
    {
        SchoolId = sample.Id, LessonId = sample.Lesson.Id, DeviceId = id, Kind = FloorDeviceKind.Pair, Name = name, JoinedAt = Noon.AddMinutes(1),
        PupilIds = [.. pupils.Select(p => sample.Pupils[p].Id)], ServedPupilIds = [.. served.Select(p => sample.Pupils[p].Id)],
    };

    [Theory, EachDatabase]
    public async Task SaveFloorLesson_SavedAgain_ComesBackAsSavedLast(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        Assert.Null(await store.FindFloorLessonAsync(sample.Id, sample.Lesson.Id));
        await store.SaveFloorLessonAsync(FloorOf(sample));
        var closed = FloorOf(sample, "T3QD9B") with { ClosedAt = Noon.AddHours(1), StoppedAt = null, CountdownUntil = null };
        Assert.Equal(FloorOf(sample), await store.FindFloorLessonByCodeAsync(sample.Id, "K7PM4X"));

        await store.SaveFloorLessonAsync(closed);

        Assert.Equal(closed, await store.FindFloorLessonAsync(sample.Id, sample.Lesson.Id));
        Assert.Equal(closed, await store.FindFloorLessonByCodeAsync(sample.Id, "T3QD9B"));
        Assert.Null(await store.FindFloorLessonByCodeAsync(sample.Id, "K7PM4X"));
        Assert.Null(await store.FindFloorLessonByCodeAsync(SampleSchool.IdOf(5), "T3QD9B"));
    }

    [Theory, EachDatabase]
    public async Task SaveFloorLesson_CodeOfAnotherLesson_IsRefused(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var other = sample.Lesson with { Id = SampleSchool.IdOf(9) };
        await test.Store.SaveLessonAsync(other);
        await test.Store.SaveFloorLessonAsync(FloorOf(sample));
        var refused = await Assert.ThrowsAsync<ArgumentException>(() => test.Store.SaveFloorLessonAsync(FloorOf(sample) with { LessonId = other.Id }));
        Assert.Contains("code", refused.Message);
        Assert.Null(await test.Store.FindFloorLessonAsync(sample.Id, other.Id));
    }

    [Theory, EachDatabase]
    public async Task SaveFloorDevice_SeveralDevices_AreListedByName(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        await store.SaveFloorLessonAsync(FloorOf(sample));
        Assert.Empty(await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id));
        var (second, first) = (DeviceOf(sample, "a-1", "window", [0, 1], [0, 1, 2]), DeviceOf(sample, "b-2", "Door", [], []) with { Kind = FloorDeviceKind.Station });
        await store.SaveFloorDeviceAsync(second);
        await store.SaveFloorDeviceAsync(first);
        AssertSame([first, second], await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id));

        var left = second with { Name = "Window", PupilIds = [], IsLocked = true, LeftAt = Noon.AddHours(1) };
        await store.SaveFloorDeviceAsync(left);

        AssertSame(left, await store.FindFloorDeviceAsync(sample.Id, sample.Lesson.Id, "a-1"));
        AssertSame([first, left], await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id));
        Assert.Null(await store.FindFloorDeviceAsync(sample.Id, sample.Lesson.Id, "A-1"));
        Assert.Null(await store.FindFloorDeviceAsync(sample.Id, SampleSchool.IdOf(5), "a-1"));
    }

    [Theory, EachDatabase]
    public async Task Save_OfStrangers_IsRefused(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveFloorLessonAsync(FloorOf(sample) with { LessonId = SampleSchool.IdOf(5) }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveFloorDeviceAsync(DeviceOf(sample, "a-1", "1", [], [])));
        await store.SaveFloorLessonAsync(FloorOf(sample));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveFloorDeviceAsync(DeviceOf(sample, "a-1", "1", [0], [0]) with { PupilIds = [SampleSchool.IdOf(5)] }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveFloorDeviceAsync(DeviceOf(sample, "a-1", "1", [0], [0]) with { ServedPupilIds = [SampleSchool.IdOf(5)] }));
        Assert.Empty(await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id));
    }

    [Theory, EachDatabase]
    public async Task ErasePupil_OnDevices_IsTakenOffBothLists(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        await store.SaveFloorLessonAsync(FloorOf(sample));
        await store.SaveFloorDeviceAsync(DeviceOf(sample, "a-1", "1", [0, 1], [2, 0, 1]));
        await store.SaveFloorDeviceAsync(DeviceOf(sample, "a-2", "2", [1], [1, 0]));
        await store.SaveFloorDeviceAsync(DeviceOf(sample, "a-3", "3", [2], [2]));

        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);

        AssertSame(
            [DeviceOf(sample, "a-1", "1", [1], [2, 1]), DeviceOf(sample, "a-2", "2", [1], [1]), DeviceOf(sample, "a-3", "3", [2], [2])],
            await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveFloorDeviceAsync(DeviceOf(sample, "a-2", "2", [1], [1, 0])));
    }

    [Theory, EachDatabase]
    public async Task ErasePupil_WhileDevicesAreSaved_LeavesNone(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        await store.SaveFloorLessonAsync(FloorOf(sample));
        var saved = new TaskCompletionSource();
        var writer = Task.Run(async () =>
        {
            for (var i = 0; ; i++)
            {
                try
                {
                    await store.SaveFloorDeviceAsync(DeviceOf(sample, $"a-{i}", $"{i}", [0], [0, 1]));
                }
                catch (ArgumentException)
                {
                    return i;
                }
                if (i == 5) saved.SetResult();
            }
        });
        await saved.Task;
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        var count = await writer;
        var devices = await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id);
        Assert.Equal(count, devices.Count);
        Assert.All(devices, d => Assert.DoesNotContain(sample.Pupils[0].Id, d.PupilIds.Concat(d.ServedPupilIds)));
        Assert.All(devices, d => Assert.Equal([sample.Pupils[1].Id], d.ServedPupilIds));
    }

    [Theory, EachDatabase]
    public async Task SaveFloor_InTwoSchoolsWithTheSameIds_StaysApart(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (ours, theirs) = (new SampleSchool(number: 1), new SampleSchool(number: 2));
        foreach (var sample in new[] { ours, theirs })
        {
            await sample.SaveToAsync(test.Store);
            await test.Store.SaveFloorLessonAsync(FloorOf(sample));
            await test.Store.SaveFloorDeviceAsync(DeviceOf(sample, "a-1", sample.School.Name, [0], [0]));
        }
        await test.Store.ErasePupilAsync(ours.Id, ours.Pupils[0].Id);
        Assert.Equal(theirs.Id, (await test.Store.FindFloorLessonByCodeAsync(theirs.Id, "K7PM4X"))!.SchoolId);
        AssertSame(DeviceOf(theirs, "a-1", "School 2", [0], [0]), await test.Store.FindFloorDeviceAsync(theirs.Id, theirs.Lesson.Id, "a-1"));
        AssertSame(DeviceOf(ours, "a-1", "School 1", [], []), await test.Store.FindFloorDeviceAsync(ours.Id, ours.Lesson.Id, "a-1"));
    }

    [Theory, EachDatabase]
    public async Task Restore_ABackup_BringsBackTheFloor(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        var device = DeviceOf(sample, "a-1", "1", [0], [0, 1]);
        await store.SaveFloorLessonAsync(FloorOf(sample));
        await store.SaveFloorDeviceAsync(device);
        await store.BackupAsync(test.PathOf("a.backup"));
        await store.SaveFloorLessonAsync(FloorOf(sample, "T3QD9B"));
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        await store.RestoreAsync(test.PathOf("a.backup"));
        Assert.Equal(FloorOf(sample), await store.FindFloorLessonAsync(sample.Id, sample.Lesson.Id));
        AssertSame([device], await store.ListFloorDevicesAsync(sample.Id, sample.Lesson.Id));
    }

    [Theory, EachDatabase]
    public async Task Open_StoreFromBeforeTheFloor_KeepsItsEntriesAndTakesTheFloor(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        await test.Store.AppendEntriesAsync(sample.Id, [sample.Trial(1), sample.Trial(2)]);
        var before = await test.Store.ListEntriesAsync(sample.Id, sample.Lesson.Id);
        Assert.Contains(await test.GoBackToAsync("KeepScans"), m => m.EndsWith("_OpenFloor", StringComparison.Ordinal));

        var store = await test.OpenAgainAsync();

        AssertSame(before, await store.ListEntriesAsync(sample.Id, sample.Lesson.Id));
        await store.SaveFloorLessonAsync(FloorOf(sample));
        Assert.Equal(FloorOf(sample), await store.FindFloorLessonAsync(sample.Id, sample.Lesson.Id));
        var look = sample.Trial(3) with { PupilId = null, TaskId = null, SetNumber = null, TrialNumber = null, Fact = new EngagementScan(24, 27) };
        await store.AppendEntriesAsync(sample.Id, [look]);
        Assert.Equal(look.Fact, (await store.ListEntriesAsync(sample.Id, sample.Lesson.Id))[^1].Fact);
    }
}
