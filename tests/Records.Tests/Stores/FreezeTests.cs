using Slantwise.Records.Sheets;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class FreezeTests
{
    [Theory, EachDatabase]
    public async Task Freeze_SameDraft_IsTheSameVersion(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var first = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        await store.SaveSheetAsync(sample.Sheet with { Name = "Another name, same draft" });
        var again = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);

        Assert.Equal(1, first.Version);
        AssertSame(sample.Sheet.Draft, first.Content);
        AssertSame(first, again);
        Assert.Equal(1, (await store.FindSheetAsync(sample.Id, sample.Sheet.Id))!.LatestVersion);
        Assert.Null(await store.FindSheetVersionAsync(sample.Id, sample.Sheet.Id, 2));
    }

    [Theory, EachDatabase]
    public async Task Freeze_ChangedDraft_IsTheNextVersionAndLeavesTheOld(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var first = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        var draft = sample.Sheet.Draft with { TrialCount = 6, Tasks = [sample.Sheet.Draft.Tasks[0] with { Cues = ["Another"] }] };
        // A stale copy of the sheet, as a page opened before the freezing holds it, says no version yet.
        await store.SaveSheetAsync(sample.Sheet with { Draft = draft, LatestVersion = 0 });
        Assert.Equal(1, (await store.FindSheetAsync(sample.Id, sample.Sheet.Id))!.LatestVersion);
        var second = await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);

        Assert.Equal(2, second.Version);
        AssertSame(draft, second.Content);
        AssertSame(first, await store.FindSheetVersionAsync(sample.Id, sample.Sheet.Id, 1));
        AssertSame(second, await store.FindSheetVersionAsync(sample.Id, sample.Sheet.Id, 2));
        AssertSame(sample.Sheet with { Draft = draft, LatestVersion = 2 }, (await store.ListSheetsAsync(sample.Id)).Single());
        // Back to the first draft: the latest version differs, so this is a third.
        await store.SaveSheetAsync(sample.Sheet);
        Assert.Equal(3, (await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id)).Version);
    }

    [Theory, EachDatabase]
    public async Task Freeze_ByManyAtOnce_IsOneVersion(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var versions = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => store.FreezeSheetAsync(sample.Id, sample.Sheet.Id))));
        Assert.All(versions, v => Assert.Equal(1, v.Version));
    }

    [Theory, EachDatabase]
    public async Task Freeze_UnknownSheet_SaysSo(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var refused = await Assert.ThrowsAsync<InvalidOperationException>(() => test.Store.FreezeSheetAsync(SampleSchool.IdOf(1), SampleSchool.IdOf(2)));
        Assert.Contains("no sheet", refused.Message);
    }

    [Theory, EachDatabase]
    public async Task Save_NewSheetThatClaimsVersions_HasNone(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await store.SaveSchoolAsync(sample.School);
        await store.SaveSheetAsync(sample.Sheet with { LatestVersion = 5 });
        Assert.Equal(0, (await store.FindSheetAsync(sample.Id, sample.Sheet.Id))!.LatestVersion);
        Assert.Equal(1, (await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id)).Version);
    }
}
