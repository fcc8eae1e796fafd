using Slantwise.Records.Entries;
using Slantwise.Storage;

namespace Slantwise.Records.Tests.Stores;

public sealed class BackupTests
{
    [Theory, EachDatabase]
    public async Task Restore_ABackup_BringsBackEverythingAndTakesTheRestAway(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample, later) = (test.Store, new SampleSchool(1), new SampleSchool(2));
        await sample.SaveToAsync(store);
        await store.FreezeSheetAsync(sample.Id, sample.Sheet.Id);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1), sample.Trial(2)]);
        var before = await StateAsync(store);
        var second = await test.OpenAgainAsync();
        await store.BackupAsync(test.PathOf("a.backup"));

        await later.SaveToAsync(store);
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(5, pupil: 1)]);
        Assert.NotEqual(before, await StateAsync(store));
        await store.RestoreAsync(test.PathOf("a.backup"));

        Assert.Equal(before, await StateAsync(store));
        Assert.Equal(before, await StateAsync(second));
        // And it goes on: what comes next is taken.
        Assert.Single((await second.AppendEntriesAsync(sample.Id, [sample.Trial(6)])).AddedIds);
        Assert.Equal(3, (await store.ListEntriesAsync(sample.Id, sample.Lesson.Id)).Count);
        Assert.Empty(Directory.EnumerateFiles(test.Folder, "*.part*"));
    }

    [Theory, EachDatabase]
    public async Task Backup_WhileEntriesArrive_IsAnAcknowledgedPrefix(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var acknowledgedCount = 0;
        var running = new TaskCompletionSource();
        using var enough = new CancellationTokenSource();
        var writer = Task.Run(async () =>
        {
            for (var next = 0; !enough.IsCancellationRequested; next += 7)
            {
                await store.AppendEntriesAsync(sample.Id, Enumerable.Range(next, 7).Select(n => sample.Trial(n)).ToList());
                Volatile.Write(ref acknowledgedCount, next + 7);
                running.TrySetResult();
            }
        });
        await running.Task;
        var bounds = new List<(int AtLeast, int AtMost)>();
        for (var i = 0; i < 3; i++)
        {
            var atLeast = Volatile.Read(ref acknowledgedCount);
            await store.BackupAsync(test.PathOf($"{i}.backup"));
            // One batch may have been committed and not yet acknowledged.
            bounds.Add((atLeast, Volatile.Read(ref acknowledgedCount) + 7));
        }
        await enough.CancelAsync();
        await writer;

        for (var i = 0; i < 3; i++)
        {
            await store.RestoreAsync(test.PathOf($"{i}.backup"));
            var numbers = (await store.ListEntriesAsync(sample.Id, sample.Lesson.Id)).Select(e => e.TrialNumber!.Value).ToList();
            Assert.Equal(Enumerable.Range(0, numbers.Count), numbers);
            Assert.True(numbers.Count % 7 == 0, "A batch is whole or not there.");
            Assert.InRange(numbers.Count, bounds[i].AtLeast, bounds[i].AtMost);
        }
    }

    [Theory, EachDatabase]
    public async Task Restore_WhatIsNoBackup_IsRefusedAndChangesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.AppendEntriesAsync(sample.Id, Enumerable.Range(1, 400).Select(n => sample.Trial(n)).ToList());
        await store.BackupAsync(test.PathOf("good.backup"));
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(500)]);
        var before = await StateAsync(store);

        var good = await File.ReadAllBytesAsync(test.PathOf("good.backup"));
        await File.WriteAllTextAsync(test.PathOf("text"), "pupil,code\nAna,A1\n");
        await File.WriteAllBytesAsync(test.PathOf("empty"), []);
        await File.WriteAllBytesAsync(test.PathOf("truncated"), good[..(good.Length / 2)]);
        await File.WriteAllBytesAsync(test.PathOf("head"), good[..200]);
        foreach (var name in new[] { "text", "empty", "truncated", "head" })
        {
            var refused = await Assert.ThrowsAsync<InvalidDataException>(() => store.RestoreAsync(test.PathOf(name)));
            Assert.Contains(name, refused.Message);
            Assert.Contains("Nothing was changed", refused.Message);
            Assert.Equal(before, await StateAsync(store));
        }
        await Assert.ThrowsAsync<FileNotFoundException>(() => store.RestoreAsync(test.PathOf("missing")));
        Assert.Equal(before, await StateAsync(store));
        Assert.Empty(Directory.EnumerateFiles(test.Folder, "*.part*"));
    }

    [Theory, EachDatabase]
    public async Task Backup_OverAnOlderOne_ReplacesItWhole(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var file = test.PathOf("new folder/a.backup");
        await store.BackupAsync(file);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(1)]);
        await store.BackupAsync(file);
        var state = await StateAsync(store);
        await store.AppendEntriesAsync(sample.Id, [sample.Trial(2)]);
        await store.RestoreAsync(file);
        Assert.Equal(state, await StateAsync(store));
        Assert.Equal([file], Directory.EnumerateFiles(Path.GetDirectoryName(file)!));
    }

    [Theory, EachDatabase]
    public async Task Files_OnUnix_AreTheOwnersOnly(Database database)
    {
        if (OperatingSystem.IsWindows()) Assert.Skip("Windows gives a file the rights of its folder.");
        await using var test = await TestStore.OpenAsync(database);
        await new SampleSchool().SaveToAsync(test.Store);
        await test.Store.BackupAsync(test.PathOf("a.backup"));
        Assert.All(Directory.GetFiles(test.Folder), file =>
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, new FileInfo(file).UnixFileMode));
    }

    [Theory, EachDatabase]
    public async Task Backup_Cancelled_LeavesTheOlderOne(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var file = test.PathOf("a.backup");
        await File.WriteAllTextAsync(file, "older");
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => test.Store.BackupAsync(file, new CancellationToken(canceled: true)));
        Assert.Equal("older", await File.ReadAllTextAsync(file));
        Assert.Empty(Directory.EnumerateFiles(test.Folder, "*.part*"));
    }

    /// <summary>Everything a store holds, as text.</summary>
    private static async Task<string> StateAsync(SchoolStore store)
    {
        var all = new List<object>();
        foreach (var school in await store.ListSchoolsAsync())
        {
            all.AddRange([school, await store.ListClassesAsync(school.Id), await store.ListPupilsAsync(school.Id), await store.ListEnrolmentsAsync(school.Id)]);
            all.AddRange([await store.ListRestrictionsAsync(school.Id), await store.ListTasksAsync(school.Id), await store.ListSheetsAsync(school.Id)]);
            foreach (var sheet in await store.ListSheetsAsync(school.Id))
                for (var v = 1; v <= sheet.LatestVersion; v++) all.Add((await store.FindSheetVersionAsync(school.Id, sheet.Id, v))!);
            foreach (var lesson in await store.ListLessonsAsync(school.Id))
                all.AddRange([lesson, await store.ListEntriesAsync(school.Id, lesson.Id)]);
        }
        return System.Text.Json.JsonSerializer.Serialize(all);
    }
}
