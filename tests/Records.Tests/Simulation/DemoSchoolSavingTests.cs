using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class DemoSchoolSavingTests
{
    private static readonly DemoSchool Demo = DemoSchool.Of(1, new DateOnly(2026, 3, 11));

    [Fact]
    public async Task SaveToAsync_EmptyStore_HoldsEverything()
    {
        var store = new MemoryStore();
        Assert.True(await Demo.SaveToAsync(store, TestContext.Current.CancellationToken));
        AssertComplete(store);
    }

    [Fact]
    public async Task SaveToAsync_SecondTimeOnAnotherDay_ChangesNothing()
    {
        var store = new MemoryStore();
        await Demo.SaveToAsync(store, TestContext.Current.CancellationToken);
        var before = store.Lessons.Values.ToList();
        Assert.False(await DemoSchool.Of(1, new DateOnly(2026, 5, 4)).SaveToAsync(store, TestContext.Current.CancellationToken));
        Assert.Equal(before, store.Lessons.Values);
    }

    [Fact]
    public async Task SaveToAsync_StoppedHalfWay_IsCompletedNextTime()
    {
        var store = new MemoryStore { BatchesBeforeFault = 3 };
        await Assert.ThrowsAsync<IOException>(() => Demo.SaveToAsync(store, TestContext.Current.CancellationToken));
        Assert.Equal(3000, store.Entries.Count);
        store.BatchesBeforeFault = null;
        Assert.True(await Demo.SaveToAsync(store, TestContext.Current.CancellationToken));
        AssertComplete(store);
    }

    private static void AssertComplete(MemoryStore store)
    {
        Assert.Equal(Demo.School, store.Schools.Values.Single());
        Assert.Equal((2, 58, 58), (store.Rosters[^1].Classes.Count, store.Rosters[^1].Pupils.Count, store.Rosters[^1].Enrolments.Count));
        Assert.Equal((4, 6, 5, 10), (store.Restrictions.Count, store.Tasks.Count, store.Sheets.Count, store.Lessons.Count));
        Assert.Equal(Demo.Entries.Count(), store.Entries.Count);
        Assert.Equal(5, store.Versions.Count);
        foreach (var lesson in store.Lessons.Values.Where(l => l.SheetVersion is not null))
        {
            var version = Assert.Single(store.Versions, v => v.SheetId == lesson.SheetId && v.Version == lesson.SheetVersion);
            Assert.Same(Demo.FrozenContents[lesson.SheetId!.Value][lesson.SheetVersion!.Value - 1], version.Content);
        }
    }
}
