using System.Text.Json;
using Slantwise.Records.Lessons;
using Slantwise.Records.Simulation;
using Slantwise.Records.Tests.Stores;

namespace Slantwise.Records.Tests.Simulation;

public sealed class DemoSchoolSavingTests
{
    private static readonly DemoSchool Demo = DemoSchool.Of(1, new DateOnly(2026, 3, 11));

    [Theory, EachDatabase]
    public async Task SaveToAsync_EmptyStore_HoldsEverything(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        Assert.True(await Demo.SaveToAsync(test.Store, TestContext.Current.CancellationToken));
        await AssertCompleteAsync(test.Store);
    }

    [Theory, EachDatabase]
    public async Task SaveToAsync_SecondTimeOnAnotherDay_ChangesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        await Demo.SaveToAsync(test.Store, TestContext.Current.CancellationToken);
        Assert.False(await DemoSchool.Of(1, new DateOnly(2026, 5, 4)).SaveToAsync(test.Store, TestContext.Current.CancellationToken));
        await AssertCompleteAsync(test.Store);
    }

    [Theory, EachDatabase]
    public async Task SaveToAsync_StoppedHalfWay_IsCompletedNextTime(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        await Assert.ThrowsAsync<IOException>(() => Demo.SaveToAsync(FailingStore.After(3, test.Store), TestContext.Current.CancellationToken));
        Assert.True(await Demo.SaveToAsync(test.Store, TestContext.Current.CancellationToken));
        await AssertCompleteAsync(test.Store);
    }

    private static async Task AssertCompleteAsync(IStore store)
    {
        var schoolId = Demo.School.Id;
        Assert.Equal([Demo.School], await store.ListSchoolsAsync());
        Assert.Equal(4, (await store.ListRestrictionsAsync(schoolId)).Count);
        Assert.Equal(6, (await store.ListTasksAsync(schoolId)).Count);
        Assert.Equal(
            Demo.Sheets.ToDictionary(s => s.Id, s => s.LatestVersion),
            (await store.ListSheetsAsync(schoolId)).ToDictionary(s => s.Id, s => s.LatestVersion));
        var lessons = await store.ListLessonsAsync(schoolId);
        Assert.Equal(Demo.Lessons.Select(l => (l.Id, l.Date)).Order(), lessons.Select(l => (l.Id, l.Date)).Order());
        foreach (var lesson in lessons)
        {
            var record = (await LessonRecord.LoadAsync(store, schoolId, lesson.Id))!;
            Assert.Equal(record.Class.Name == "7 Heron" ? 28 : 30, record.Pupils.Count);
            Assert.Equal(
                Demo.Entries.Where(e => e.LessonId == lesson.Id).Select(e => (e.Id, e.Fact)).OrderBy(e => e.Id),
                record.Entries.Select(e => (e.Id, e.Fact)).OrderBy(e => e.Id));
            if (lesson.SheetVersion is { } version)
                Assert.Equal(JsonSerializer.Serialize(Demo.FrozenContents[lesson.SheetId!.Value][version - 1]), JsonSerializer.Serialize(record.Sheet!.Content));
            else Assert.Null(record.Sheet);
        }
    }
}
