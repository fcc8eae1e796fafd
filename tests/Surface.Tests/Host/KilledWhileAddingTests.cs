using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using Microsoft.Data.Sqlite;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Host;

public sealed class KilledWhileAddingTests(DemoFolder demo)
{
    // Enough that the stream outlasts the kill; the test fails if it does not.
    private const int StreamedCount = 30_000;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public async Task EntriesAdd_KilledInTheMiddle_KeepsEveryAcknowledgedEntry(int seed)
    {
        var random = new Random(seed);
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        string[] lines;
        await using (var store = await LessonOfDemo.OpenAsync(folder)) lines = Lines(await LessonOfDemo.LoadAsync(store, lessonId), random);

        using var process = HostProgram.Start("C.UTF-8", "entries", "add", "-", "--lesson", lessonId.ToString(), "--data", folder.FullPath);
        var acknowledged = new ConcurrentBag<Guid>();
        var killAfterCount = random.Next(1, 4000);
        var isTimeToKill = new TaskCompletionSource();
        var reading = Task.Run(async () =>
        {
            // To the end of the pipe, past the kill: what was said before it must hold.
            while (await process.StandardOutput.ReadLineAsync() is { } line)
            {
                if (!line.EndsWith('}')) break;
                acknowledged.Add(JsonNode.Parse(line)!["added"]!.GetValue<Guid>());
                if (acknowledged.Count == killAfterCount) isTimeToKill.TrySetResult();
            }
            isTimeToKill.TrySetResult();
        });
        var writing = Task.Run(() => Write(process.StandardInput, lines));
        await isTimeToKill.Task.WaitAsync(HostProgram.Patience);
        await Task.Delay(random.Next(0, 40));
        Assert.False(process.HasExited, "It was still taking lines.");
        process.Kill();
        await process.WaitForExitAsync();
        await reading;
        await writing;

        Assert.True(acknowledged.Count >= killAfterCount, $"{acknowledged.Count} acknowledged, {killAfterCount} waited for.");
        Assert.True(acknowledged.Count < StreamedCount, "The kill came before the end of the stream.");
        await using var reopened = await LessonOfDemo.OpenAsync(folder);
        var kept = (await LessonOfDemo.LoadAsync(reopened, lessonId)).Entries.Select(e => e.Id).ToHashSet();
        Assert.Subset(kept, acknowledged.ToHashSet());
        Assert.Equal("ok", Integrity(folder.At("slantwise.db")));
    }

    [Fact]
    public async Task EntriesAdd_SentAgainAfterAKill_TakesEachOnce()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        string[] lines;
        await using (var store = await LessonOfDemo.OpenAsync(folder)) lines = Lines(await LessonOfDemo.LoadAsync(store, lessonId), new Random(9))[..600];
        string[] command = ["entries", "add", "-", "--lesson", lessonId.ToString(), "--data", folder.FullPath];

        var half = await HostProgram.RunInAsync(string.Join('\n', lines[..300]), "C.UTF-8", command);
        var all = await HostProgram.RunInAsync(string.Join('\n', lines), "C.UTF-8", command);

        Assert.Equal(300, half.Output.Split('\n').Count(l => l.StartsWith("{\"added\"")));
        Assert.Equal(300, all.Output.Split('\n').Count(l => l.StartsWith("{\"known\"")));
        Assert.Equal(300, all.Output.Split('\n').Count(l => l.StartsWith("{\"added\"")));
        await using var reopened = await LessonOfDemo.OpenAsync(folder);
        Assert.Equal(600, (await LessonOfDemo.LoadAsync(reopened, lessonId)).Entries.Count);
    }

    [Fact]
    public async Task EntriesAdd_WithABadLineAmongGoodOnes_AnswersEachLine()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        string[] lines;
        await using (var store = await LessonOfDemo.OpenAsync(folder)) lines = Lines(await LessonOfDemo.LoadAsync(store, lessonId), new Random(10))[..2];

        var run = await HostProgram.RunInAsync(
            $"{lines[0]}\n\n{{\"id\":7}}\n{lines[1]}\n", "C.UTF-8", "entries", "add", "-", "--lesson", lessonId.ToString(), "--data", folder.FullPath);

        Assert.Equal(2, run.ExitCode);
        Assert.Single(run.ErrorLines);
        var answers = run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonNode.Parse(l)!.AsObject()).ToList();
        Assert.Equal(3, answers.Count);
        Assert.True(answers[0].ContainsKey("added"));
        Assert.Equal(3, answers[1]["line"]!.GetValue<int>());
        Assert.False(string.IsNullOrWhiteSpace(answers[1]["refused"]!.GetValue<string>()));
        Assert.True(answers[2].ContainsKey("added"));
    }

    private static string[] Lines(LessonRecord record, Random random)
    {
        var content = record.Sheet!.Content;
        var entries = Enumerable.Range(1, StreamedCount).Select(number => new Entry
        {
            SchoolId = record.School.Id,
            Id = EntryId.New(TimeProvider.System),
            LessonId = record.Lesson.Id,
            PupilId = record.Pupils[random.Next(record.Pupils.Count)].Id,
            TaskId = content.Tasks[random.Next(content.Tasks.Count)].TaskId,
            SetNumber = random.Next(1, content.SetCount + 1),
            TrialNumber = random.Next(1, content.TrialCount + 1),
            Fact = new Trial(random.Next(2) == 0),
            Source = EntrySource.Floor,
            DeviceId = "tablet-1",
            DeviceSequence = number,
            MadeAt = TimeProvider.System.GetUtcNow(),
        });
        return EntryFile.WriteJsonLines(entries).Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static void Write(StreamWriter input, string[] lines)
    {
        try
        {
            foreach (var line in lines) input.WriteLine(line);
        }
        catch (IOException)
        {
            // The pipe ends with the process that was killed.
        }
    }

    private static string Integrity(string file)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        return (string)command.ExecuteScalar()!;
    }
}
