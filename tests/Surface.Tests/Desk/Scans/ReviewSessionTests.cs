using Slantwise.Desk.Pages.Scans;
using Slantwise.Engines.Marks;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Storage.Sqlite;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Desk.Scans;

public sealed class ReviewSessionTests(DemoFolder demo)
{
    [Fact]
    public async Task Answer_SecondsByHand_GoIntoTheirTrialAndComeBackOut()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var record = await ScannedAsync(store, lessonId);
        var session = await ReviewSession.LoadAsync(store, record, TimeProvider.System);
        // What waits first, then seconds, for which nothing waits.
        Assert.Equal(["Next-1-1-0", "Seconds-1-1-1", "Seconds-1-1-2"], session.Cards.Select(c => c.Item.Key));
        await session.AnswerAsync(session.Current!, (int)NextLevel.Harder);
        Assert.True(session.Current!.IsSeconds);
        await session.AnswerAsync(session.Current, 4.5m);
        Assert.Equal(4.5, (await TrialAsync(store, lessonId))!.HeldS);
        Assert.Equal(1, session.OpenCount);

        await session.UndoAsync();
        Assert.Equal(("Seconds-1-1-1", 2), (session.Current!.Item.Key, session.OpenCount));
        Assert.Null((await TrialAsync(store, lessonId))!.HeldS);

        await session.SkipSecondsAsync();
        Assert.Equal((0, 3), (session.OpenCount, session.Place));
        var again = await ReviewSession.LoadAsync(store, await LessonOfDemo.LoadAsync(store, lessonId), TimeProvider.System);
        Assert.Null(again.Current);
        Assert.True(again.CanUndo);
    }

    [Fact]
    public async Task Answer_ThatCannotBeStored_ComesBackToItsCard()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var session = await ReviewSession.LoadAsync(store, await ScannedAsync(store, lessonId), TimeProvider.System);
        var (card, turn) = (session.Current!, session.Turn);
        await Assert.ThrowsAsync<ArgumentException>(() => session.AnswerAsync(card, 77));
        Assert.Same(card, session.Current);
        Assert.Equal((false, false, false), (card.IsAnswered, session.IsStoring, session.CanUndo));
        Assert.True(session.Turn > turn, "A key that was on its way for the card before is not to be taken for this one.");
    }

    [Fact]
    public async Task Move_BeyondTheEnds_StaysAndAnswersNothing()
    {
        using var folder = await demo.CopyAsync();
        var lessonId = await LessonOfDemo.PrepareAsync(folder);
        await using var store = await LessonOfDemo.OpenAsync(folder);
        var session = await ReviewSession.LoadAsync(store, await ScannedAsync(store, lessonId), TimeProvider.System);
        session.Move(-1);
        Assert.Equal(1, session.Place);
        session.Move(1);
        Assert.Equal((2, 3), (session.Place, session.OpenCount));
        await session.UndoAsync();
        Assert.Equal((2, 3), (session.Place, session.OpenCount));
    }

    private static async Task<Trial?> TrialAsync(SqliteStore store, Guid lessonId) => EntryLog.Current((await LessonOfDemo.LoadAsync(store, lessonId)).Entries)
        .Where(e => e.TrialNumber == 1).Select(e => e.Fact).OfType<Trial>().SingleOrDefault();

    // A page with a level, a trial done and entered, seconds by hand twice, and a faint mark at what comes next.
    private static async Task<LessonRecord> ScannedAsync(SqliteStore store, Guid lessonId)
    {
        var record = await LessonOfDemo.LoadAsync(store, lessonId);
        var (pupil, task) = (record.Pupils[0], record.Sheet!.Content.Tasks[0]);
        var recorder = new Recorder(record.School.Id, lessonId, EntrySource.Paper, ScanPlan.DeviceId, TimeProvider.System, record.Entries);
        await store.AppendEntriesAsync(record.School.Id,
        [
            recorder.Put(pupil.Id, task.TaskId, 1, null, new Choice(task.Levels[0].Id))!,
            recorder.Put(pupil.Id, task.TaskId, 1, 1, new Trial(true))!,
        ]);
        var scan = new Scan
        {
            SchoolId = record.School.Id, Id = EntryId.New(TimeProvider.System), File = "a.jpg", FilePage = 1, FormNumber = 1, PictureTag = 1, ReadAt = TimeProvider.System.GetUtcNow(),
            CodeFound = CodeFound.Read, LessonId = lessonId, PupilId = pupil.Id, SheetVersion = record.Sheet.Version, SheetPage = 1,
            Items =
            [
                new() { Question = new(SheetFieldKind.Level, 1, 1), Value = 1, Fields = [Field(SheetFieldKind.Level, 1, MarkVerdict.Marked), Field(SheetFieldKind.Level, 2, MarkVerdict.Empty)] },
                new() { Question = new(SheetFieldKind.Held, 1, 1, 1), Value = 1, Fields = [Field(SheetFieldKind.Held, 1, MarkVerdict.Marked), Field(SheetFieldKind.NotYet, 1, MarkVerdict.Empty)] },
                new() { Question = new(SheetFieldKind.Next, 1, 1), Doubt = ScanDoubt.Faint, Fields = [.. new[] { 3, 1, 2 }.Select(n => Field(SheetFieldKind.Next, n, n == 2 ? MarkVerdict.Doubtful : MarkVerdict.Empty))] },
                new() { Question = new(SheetFieldKind.Seconds, 1, 1, 1), Doubt = ScanDoubt.ByHand },
                new() { Question = new(SheetFieldKind.Seconds, 1, 1, 2), Doubt = ScanDoubt.ByHand },
            ],
        };
        await store.SaveScanAsync(new ScanSave(scan));
        return await LessonOfDemo.LoadAsync(store, lessonId);
    }

    private static FieldReading Field(SheetFieldKind kind, int number, MarkVerdict verdict) => new(new SheetField(kind, 1, 1, number).Key, verdict, 0.9);
}
