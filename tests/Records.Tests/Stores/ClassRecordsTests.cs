using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class ClassRecordsTests
{
    public static TheoryData<Database, string> Changes => new(
        from database in Enum.GetValues<Database>()
        from change in Made.Keys
        select (database, change));

    // Everything that records are made of, changed one at a time; Pupils[3] is not in the class now.
    private static readonly Dictionary<string, Func<IStore, SampleSchool, Task>> Made = new()
    {
        ["policy"] = (store, s) => store.SaveSchoolAsync(s.School with { Policy = new() { Rolls = PolicyChoice.Planned } }),
        ["class"] = (store, s) => store.SaveRosterAsync(s.Id, new() { Classes = [s.Class with { Name = "7C" }] }),
        ["name"] = (store, s) => store.SaveRosterAsync(s.Id, new() { Pupils = [s.Pupils[1] with { DisplayName = "Other" }] }),
        ["membership"] = (store, s) => store.SaveRosterAsync(s.Id, new() { Enrolments = [new() { SchoolId = s.Id, ClassId = s.Class.Id, PupilId = s.Pupils[3].Id, IsCurrent = true }] }),
        ["restriction"] = (store, s) => store.SaveRestrictionAsync(s.Restriction with { Until = null }),
        ["lift"] = (store, s) => store.RemoveRestrictionAsync(s.Id, s.Restriction.Id),
        ["day"] = (store, s) => store.SaveLessonAsync(s.Lesson with { SheetVersion = 1, Date = s.Lesson.Date.AddDays(1) }),
        ["phases"] = (store, s) => store.SaveLessonAsync(s.Lesson with { SheetVersion = 1, Phases = [] }),
        ["lesson"] = (store, s) => store.SaveLessonAsync(s.Lesson with { Id = SampleSchool.IdOf(800) }),
        ["entry"] = (store, s) => store.AppendEntriesAsync(s.Id, [s.Trial(7)]),
        ["erasure"] = (store, s) => store.ErasePupilAsync(s.Id, s.Pupils[0].Id),
        ["erasure of one who left"] = (store, s) => store.ErasePupilAsync(s.Id, s.Pupils[3].Id),
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public async Task Load_AfterAChangeByAnotherProgram_IsAsIfLoadedAnew(Database database, string change)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, await SavedAsync(test.Store));
        var known = await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id);
        Assert.Same(known, await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id, known));

        await Made[change](await test.OpenAgainAsync(), sample);

        var loaded = await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id, known);
        Assert.NotSame(known, loaded);
        AssertSame((await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id)).Lessons, loaded.Lessons);
        Assert.Same(loaded, await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id, loaded));
    }

    [Theory, EachDatabase]
    public async Task Load_EntryOfOneLesson_KeepsTheOtherAsItIs(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, await SavedAsync(test.Store));
        var known = await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(7)]);
        var loaded = await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id, known);
        Assert.Equal([true, false], loaded.Lessons.Zip(known.Lessons, ReferenceEquals));
    }

    [Theory, EachDatabase]
    public async Task Load_EntriesErasedAndAsManyWritten_IsSeen(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, await SavedAsync(test.Store));
        var known = await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id);
        await store.ErasePupilAsync(sample.Id, sample.Pupils[3].Id);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(8, pupil: 1)]);
        var loaded = await ClassRecords.LoadAsync(store, sample.Id, sample.Class.Id, known);
        Assert.Equal(known.Lessons[^1].Entries.Count, loaded.Lessons[^1].Entries.Count);
        Assert.DoesNotContain(loaded.Lessons[^1].Entries, e => e.PupilId == sample.Pupils[3].Id);
    }

    [Theory, EachDatabase]
    public async Task ListLessonStamps_AsALessonGoesOn_TellEveryStepApart(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        async Task<LessonStamp> StampAsync() => Assert.Single(await store.ListLessonStampsAsync(sample.Id, sample.Class.Id));
        Assert.Equal(new(sample.Lesson.Id, 0, null, null), await StampAsync());

        var version = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        await store.SaveLessonAsync(sample.Lesson with { SheetVersion = 1 });
        Assert.Equal(new(sample.Lesson.Id, 0, null, version.FrozenAt), await StampAsync());

        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1), sample.Trial(2)]);
        var written = await StampAsync();
        Assert.Equal((2, (await store.ListEntriesAsync(sample.Id, sample.Lesson.Id))[^1].ReceivedAt), (written.EntryCount, written.LastReceivedAt));
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1)]);
        Assert.Equal(written, await StampAsync());
        Assert.Empty(await store.ListLessonStampsAsync(EntryId.New(test.Clock), sample.Class.Id));
        Assert.Empty(await store.ListLessonStampsAsync(sample.Id, EntryId.New(test.Clock)));
    }

    // Two lessons, entries in the second, one of them about a pupil who has left the class.
    private static async Task<SampleSchool> SavedAsync(IStore store)
    {
        var sample = new SampleSchool();
        await sample.SaveToAsync(store);
        await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        await store.SaveLessonAsync(sample.Lesson with { SheetVersion = 1 });
        await store.SaveLessonAsync(sample.Lesson with { Id = SampleSchool.IdOf(700), Date = sample.Lesson.Date.AddDays(-7), SheetId = null });
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1), sample.Trial(2, pupil: 1), sample.Trial(3, pupil: 3)]);
        return sample;
    }
}
