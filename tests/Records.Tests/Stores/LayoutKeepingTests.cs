using Slantwise.Records.Scans;
using Slantwise.Records.Tests.Scans;

namespace Slantwise.Records.Tests.Stores;

public sealed class LayoutKeepingTests
{
    [Theory, EachDatabase]
    public async Task Keep_Layouts_AreFoundByTagAndKeptOnce(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var (one, other) = (PrintedLayout.Of(sample.Id, PrintedLayoutTests.Layout(15)), PrintedLayout.Of(sample.Id, PrintedLayoutTests.Layout(16), [3]));
        await store.KeepLayoutsAsync(sample.Id, []);
        await store.KeepLayoutsAsync(sample.Id, [one]);
        await store.KeepLayoutsAsync(sample.Id, [one, other]);
        // What is here stays as it is, whatever comes under its tag.
        await store.KeepLayoutsAsync(sample.Id, [one with { Text = "{}" }]);

        Assert.Equal(one, await store.FindLayoutAsync(sample.Id, one.Tag));
        Assert.Equal(other, await store.FindLayoutAsync(sample.Id, other.Tag));
        Assert.Equal([3], (await store.FindLayoutAsync(sample.Id, other.Tag))!.Form().RowTags);
        Assert.Null(await store.FindLayoutAsync(sample.Id, one.Tag + 1));
        Assert.Null(await store.FindLayoutAsync(SampleSchool.IdOf(9), one.Tag));
    }

    [Theory, EachDatabase]
    public async Task Keep_ForAnotherSchool_SavesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var own = PrintedLayout.Of(sample.Id, PrintedLayoutTests.Layout(15));
        var stranger = PrintedLayout.Of(SampleSchool.IdOf(0xB0), PrintedLayoutTests.Layout(16));
        await Assert.ThrowsAsync<ArgumentException>(() => store.KeepLayoutsAsync(sample.Id, [own, stranger]));
        await Assert.ThrowsAsync<ArgumentException>(() => store.KeepLayoutsAsync(stranger.SchoolId, [stranger]));
        Assert.Null(await store.FindLayoutAsync(sample.Id, own.Tag));
        Assert.Null(await store.FindLayoutAsync(stranger.SchoolId, stranger.Tag));
    }

    [Theory, EachDatabase]
    public async Task Restore_ABackup_BringsLayoutsBack(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var (before, after) = (PrintedLayout.Of(sample.Id, PrintedLayoutTests.Layout(15)), PrintedLayout.Of(sample.Id, PrintedLayoutTests.Layout(16)));
        await store.KeepLayoutsAsync(sample.Id, [before]);
        await store.BackupAsync(test.PathOf("layouts.backup"));
        await store.KeepLayoutsAsync(sample.Id, [after]);
        await store.RestoreAsync(test.PathOf("layouts.backup"));
        Assert.Equal(before, await store.FindLayoutAsync(sample.Id, before.Tag));
        Assert.Null(await store.FindLayoutAsync(sample.Id, after.Tag));
    }
}
