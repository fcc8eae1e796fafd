using Slantwise.Records;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Storage.Sqlite;

namespace Slantwise.Surface.Tests.Host;

/// <summary>The demo school's lesson that is still to come, prepared as by printing it, with nothing written yet.</summary>
public static class LessonOfDemo
{
    /// <summary>Prints the lesson's sheets, which freezes its sheet.</summary>
    /// <param name="folder">A copy of the demo folder.</param>
    /// <returns>The lesson's id.</returns>
    public static async Task<Guid> PrepareAsync(TempFolder folder)
    {
        var run = await HostProgram.RunAsync("sheet", "print", "--lesson", "latest", "-o", folder.At("sheets.pdf"), "--json", "--data", folder.FullPath);
        return run.Json()["lessonId"]!.GetValue<Guid>();
    }

    /// <summary>Opens the lesson for tablets, as the desk's button does. Not while the folder is served.</summary>
    /// <param name="folder">A copy of the demo folder.</param>
    /// <returns>The lesson's id and its code.</returns>
    public static async Task<FloorLesson> OpenForTabletsAsync(TempFolder folder)
    {
        await using var store = await OpenAsync(folder);
        await using var hub = new FloorHub(store, TimeProvider.System, Random.Shared.Next, "test");
        var school = (await store.ListSchoolsAsync()).Single().Id;
        return await hub.OpenAsync(school, (await store.ListLessonsAsync(school))[^1].Id);
    }

    /// <summary>Opens the folder's store in this process.</summary>
    public static Task<SqliteStore> OpenAsync(TempFolder folder) => SqliteStore.OpenAsync(folder.At("slantwise.db"), TimeProvider.System);

    /// <summary>The lesson as it stands in a store.</summary>
    public static async Task<LessonRecord> LoadAsync(IStore store, Guid lessonId) =>
        (await LessonRecord.LoadAsync(store, (await store.ListSchoolsAsync()).Single().Id, lessonId))!;
}
