using System.Text.Json.Nodes;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Host;

public sealed class SameEvidenceTests(DemoFolder demo)
{
    [Fact]
    public async Task Entries_TypedOrAddedFromAFile_GiveTheSameEvidence()
    {
        using var typed = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(typed);
        using var added = new TempFolder();
        File.Copy(typed.At("slantwise.db"), added.At("slantwise.db"));

        string table;
        await using (var store = await LessonOfDemo.OpenAsync(typed))
        {
            var record = await LessonOfDemo.LoadAsync(store, lessonId);
            await store.AppendEntriesAsync(record.School.Id, Typed(record));
            table = Table(record);
        }
        var run = await HostProgram.RunAsync(
            "entries", "add", added.Write("results.csv", table), "--lesson", lessonId.ToString(), "--json", "--data", added.FullPath);
        Assert.NotEqual(0, run.Json()["addedCount"]!.GetValue<int>());

        var (fromDesk, fromFile) = (await EvidenceAsync(typed, lessonId), await EvidenceAsync(added, lessonId));
        Assert.Contains("\"trialCount\":15", fromDesk);
        Assert.Equal(fromDesk, fromFile);
    }

    [Fact]
    public async Task EntriesAdd_OfTheSameFileTwice_AddsNothing()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        string table;
        await using (var store = await LessonOfDemo.OpenAsync(folder)) table = Table(await LessonOfDemo.LoadAsync(store, lessonId));
        var file = folder.Write("results.csv", table);
        string[] command = ["entries", "add", file, "--lesson", lessonId.ToString(), "--json", "--data", folder.FullPath];
        Assert.NotEqual(0, (await HostProgram.RunAsync(command)).Json()["addedCount"]!.GetValue<int>());
        Assert.Equal(0, (await HostProgram.RunAsync(command)).Json()["addedCount"]!.GetValue<int>());
    }

    [Fact]
    public async Task EntriesAdd_WithABadRow_AddsNothingUnlessToldToSkipIt()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        LessonRecord record;
        await using (var store = await LessonOfDemo.OpenAsync(folder)) record = await LessonOfDemo.LoadAsync(store, lessonId);
        var file = folder.Write("results.csv", Table(record) + "NOBODY,1,1,1,2,1 1 1 1 1,1,same,\n");
        string[] command = ["entries", "add", file, "--lesson", lessonId.ToString(), "--json", "--data", folder.FullPath];

        var refused = await HostProgram.RunAsync(command);
        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("NOBODY", refused.Error);
        Assert.Contains("line 5", refused.Error);
        await using (var store = await LessonOfDemo.OpenAsync(folder)) Assert.Empty((await LessonOfDemo.LoadAsync(store, lessonId)).Entries);

        var skipped = (await HostProgram.RunAsync([.. command, "--skip-bad"])).Json();
        Assert.Equal(1, skipped["refusedRowCount"]!.GetValue<int>());
        Assert.NotEqual(0, skipped["addedCount"]!.GetValue<int>());
    }

    [Fact]
    public async Task Evidence_OfALesson_IsTheSameTwice()
    {
        using var folder = await demo.CopyAsync();
        string[] command = ["evidence", "--lesson", "latest", "--json", "--data", folder.FullPath];
        Assert.Equal((await HostProgram.RunAsync(command)).Json().ToJsonString(), (await HostProgram.RunAsync(command)).Json().ToJsonString());
    }

    [Fact]
    public async Task Evidence_AsWords_ShowsCountsWithNAndRange()
    {
        using var folder = await demo.CopyAsync();
        var run = await HostProgram.RunAsync("evidence", "--lesson", "latest", "--data", folder.FullPath);
        Assert.Equal(0, run.ExitCode);
        Assert.Matches(@"tried by \d+ pupils?, \d+ of \d+ tries succeeded \(likely \d+ to \d+ in 100\)", run.Output);
        Assert.Contains("Whom to ask", run.Output);
    }

    // Two sets of the first task by one pupil, one of the second task by another: what the file below says.
    private static List<Entry> Typed(LessonRecord record)
    {
        var recorder = new Recorder(record.School.Id, record.Lesson.Id, EntrySource.Desk, "desk", TimeProvider.System, record.Entries);
        var (first, second) = (record.Pupils[0].Id, record.Pupils[1].Id);
        var (one, two) = (record.Sheet!.Content.Tasks[0], record.Sheet.Content.Tasks[1]);
        var entries = new List<Entry?>();
        Put(first, one.TaskId, 1, new Choice(one.Levels[1].Id), new Prediction(4, null), new Decision(NextLevel.Harder, "felt easy"));
        Tries(first, one.TaskId, 1, true, true, false, true, true);
        Cues(first, one.TaskId, 1, one.Cues.Count, 1, 3);
        Put(first, one.TaskId, 2, new Choice(one.Levels[2].Id), new Prediction(3, null), new Decision(NextLevel.Same));
        Tries(first, one.TaskId, 2, false, true, false, false, true);
        Cues(first, one.TaskId, 2, one.Cues.Count, 1);
        Put(second, two.TaskId, 1, new Choice(two.Levels[0].Id), new Prediction(5, null), new Decision(NextLevel.Easier, "sun in my eyes"));
        Tries(second, two.TaskId, 1, true, false, true, false, false);
        Cues(second, two.TaskId, 1, two.Cues.Count, 2);
        return entries.OfType<Entry>().ToList();

        void Put(Guid pupil, Guid task, int set, params EntryFact[] facts)
        {
            foreach (var fact in facts) entries.Add(recorder.Put(pupil, task, set, null, fact));
        }

        void Tries(Guid pupil, Guid task, int set, params bool[] successes)
        {
            for (var i = 0; i < successes.Length; i++) entries.Add(recorder.Put(pupil, task, set, i + 1, new Trial(successes[i])));
        }

        void Cues(Guid pupil, Guid task, int set, int count, params int[] ticked)
        {
            for (var cue = 1; cue <= count; cue++) entries.Add(recorder.Put(pupil, task, set, null, new CueTick(cue, ticked.Contains(cue))));
        }
    }

    private static string Table(LessonRecord record) =>
        "pupil,task,set,level,prediction,trials,cues,decision,reason\n"
        + $"{record.Pupils[0].Code},1,1,2,4,1 1 0 1 1,1 3,harder,felt easy\n"
        + $"{record.Pupils[0].Code},1,2,3,3,0 1 0 0 1,1,same,\n"
        + $"{record.Pupils[1].Code},2,1,1,5,1 0 1 0 0,2,easier,sun in my eyes\n";

    // Which entry a number came from differs, as it must; everything else is the evidence.
    private static async Task<string> EvidenceAsync(TempFolder folder, Guid lessonId)
    {
        var run = await HostProgram.RunAsync("evidence", "--lesson", lessonId.ToString(), "--json", "--data", folder.FullPath);
        var json = run.Json();
        WithoutEntryIds(json);
        return json.ToJsonString();
    }

    private static void WithoutEntryIds(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list) WithoutEntryIds(item);
        }
        else if (node is JsonObject found)
        {
            foreach (var name in found.Select(p => p.Key).Where(k => k.Contains("entryId", StringComparison.OrdinalIgnoreCase)).ToList()) found.Remove(name);
            foreach (var (_, value) in found) WithoutEntryIds(value);
        }
    }
}
