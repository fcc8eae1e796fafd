using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class LessonRecordTests
{
    [Theory, EachDatabase]
    public async Task LoadClass_TwoLessons_AreTheRecordsLoadedOneByOneEarliestFirst(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        await store.SaveLessonAsync(sample.Lesson with { SheetVersion = 1 });
        var earlier = sample.Lesson with { Id = EntryId.New(test.Clock), Date = sample.Lesson.Date.AddDays(-7), SheetId = null };
        await store.SaveLessonAsync(earlier);

        var records = await LessonRecord.LoadClassAsync(store, sample.Id, sample.Class.Id);

        Assert.Equal([earlier.Id, sample.Lesson.Id], records.Select(r => r.Lesson.Id));
        Assert.Equal([false, true], records.Select(r => r.Sheet is not null));
        foreach (var record in records)
        {
            var alone = (await LessonRecord.LoadAsync(store, sample.Id, record.Lesson.Id))!;
            AssertSame(alone, record);
        }
    }

    [Theory, EachDatabase]
    public async Task LoadClass_ClassOfNobody_IsEmpty(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        Assert.Empty(await LessonRecord.LoadClassAsync(test.Store, sample.Id, EntryId.New(test.Clock)));
        Assert.Empty(await LessonRecord.LoadClassAsync(test.Store, EntryId.New(test.Clock), sample.Class.Id));
    }
}
