using System.Globalization;
using Slantwise.Desk.Pages.Results;
using Slantwise.Records;
using Slantwise.Records.Entries;
using Slantwise.Records.Schools;

namespace Slantwise.Surface.Tests.Desk.Results;

public sealed class ResultsSessionTests
{
    private static readonly GridCell Level = new(1, 1, CellKind.Level);
    private static readonly GridCell Predicted = new(1, 1, CellKind.Prediction);

    [Fact]
    public async Task WriteAsync_CellTyped_IsInTheStoreAtOnce()
    {
        var (session, store) = Open();

        await session.WriteAsync(SampleLesson.Ada, [(Level, "2")]);

        var entry = Assert.Single(store.Entries);
        Assert.Equal(("desk", EntrySource.Desk, 1), (entry.DeviceId, entry.Source, entry.DeviceSequence));
        Assert.Equal(1, session.TypedInCount);
    }

    [Fact]
    public async Task WriteAsync_StoreFails_TextStaysAndGoesWithTheNextCell()
    {
        var (session, store) = Open();
        store.Fail(true);
        await Assert.ThrowsAsync<IOException>(() => session.WriteAsync(SampleLesson.Ada, [(Level, "2")]));
        var grid = session.GridOf(SampleLesson.Ada);
        Assert.Empty(store.Entries);
        Assert.Equal("2", grid.TextOf(Level));
        Assert.Equal(ResultsGrid.NotSaved, grid.RemarkOn(Level)!.Key);

        store.Fail(false);
        await session.WriteAsync(SampleLesson.Ada, [(Predicted, "4")]);

        Assert.Equal([typeof(Choice), typeof(Prediction)], store.Entries.Select(e => e.Fact.GetType()));
        Assert.Empty(grid.Unsaved);
    }

    [Fact]
    public async Task UndoAsync_StoreFails_CanBeUndoneLater()
    {
        var (session, store) = Open();
        await session.WriteAsync(SampleLesson.Ada, [(Level, "2")]);
        store.Fail(true);
        await Assert.ThrowsAsync<IOException>(() => session.UndoAsync(SampleLesson.Ada));
        Assert.Equal("2", session.GridOf(SampleLesson.Ada).TextOf(Level));

        store.Fail(false);
        var cell = await session.UndoAsync(SampleLesson.Ada);

        Assert.Equal(Level, cell);
        Assert.Empty(EntryLog.Current(store.Entries));
    }

    [Fact]
    public async Task WriteAsync_ColleagueTypedSince_CorrectsTheirEntry()
    {
        var (session, store) = Open();
        var colleague = SessionOver((IStore)(object)store);
        await colleague.WriteAsync(SampleLesson.Ada, [(Level, "1")]);

        await session.WriteAsync(SampleLesson.Ada, [(Level, "3"), (Predicted, "5")]);

        Assert.Equal(store.Entries[0].Id, store.Entries[1].SupersedesId);
        Assert.Equal([1, 2, 3], store.Entries.Select(e => e.DeviceSequence));
    }

    [Fact]
    public async Task WriteAsync_ClearedWhereTwoDevicesAnswered_LeavesNeither()
    {
        var (session, store) = Open();
        foreach (var device in new[] { "tablet-1", "tablet-2" })
        {
            var recorder = new Recorder(SampleLesson.School.Id, SampleLesson.LessonId, EntrySource.Floor, device, new TickingClock(), []);
            store.Add(recorder.Put(SampleLesson.Ada.Id, SampleLesson.Balance.TaskId, 1, null, new Choice(SampleLesson.Balance.Levels[0].Id))!);
        }
        await session.WriteAsync(SampleLesson.Ada, [(Level, "")]);

        Assert.Empty(EntryLog.Current(store.Entries));
        Assert.Equal(4, store.Entries.Count);
        Assert.Equal("", session.GridOf(SampleLesson.Ada).TextOf(Level));
    }

    [Fact]
    public async Task SetAbsentAsync_Pupil_CountsAsTypedInUntilTakenBack()
    {
        var (session, store) = Open();
        await session.SetAbsentAsync(SampleLesson.Ben, true);
        Assert.True(session.ProgressOf(SampleLesson.Ben).IsAbsent);
        Assert.Equal(1, session.TypedInCount);

        await session.SetAbsentAsync(SampleLesson.Ben, false);

        Assert.Equal(0, session.TypedInCount);
        Assert.Equal(2, store.Entries.Count);
    }

    [Fact]
    public async Task ProgressOf_SetWithEveryTrial_IsComplete()
    {
        var (session, _) = Open();
        await session.WriteAsync(SampleLesson.Ada, [(Level, "2"), .. Enumerable.Range(1, 5).Select(trial => (new GridCell(1, 1, CellKind.Trial, trial), "1"))]);
        await session.WriteAsync(SampleLesson.Ada, [(new GridCell(1, 2, CellKind.Level), "2")]);
        Assert.Equal(new SheetProgress(1, 2, 3, false), session.ProgressOf(SampleLesson.Ada));
        Assert.Equal(new SheetProgress(0, 0, 3, false), session.ProgressOf(SampleLesson.Ben));
    }

    [Fact]
    public async Task WriteAsync_PupilWithFewerLevels_GoesByTheNumbersOnTheirPaper()
    {
        var (store, inside) = EntriesOnlyStore.Create();
        var levels = SampleLesson.Balance.Levels.ToList();
        levels[1] = levels[1] with { Demands = [BodyDemand.Impact] };
        var record = SampleLesson.Record(SampleLesson.Sheet(tasks: [SampleLesson.Balance with { Levels = levels }]));
        record = record with
        {
            Restrictions = [new() { SchoolId = SampleLesson.School.Id, Id = Guid.NewGuid(), PupilId = SampleLesson.Ada.Id, Without = BodyDemand.Impact }],
        };
        var session = new ResultsSession(store, record, new TickingClock(), CultureInfo.GetCultureInfo("en-GB"));

        // Ada's paper counts the sheet's levels 1, 3 and 4 as 1, 2 and 3; what was not offered to her follows as 4. Ben's is whole.
        await session.WriteAsync(SampleLesson.Ada, [(Level, "2"), (Level with { SetNumber = 2 }, "4")]);
        await session.WriteAsync(SampleLesson.Ben, [(Level, "2")]);

        Assert.Equal([levels[2].Id, levels[1].Id, levels[1].Id], inside.Entries.Select(e => ((Choice)e.Fact).LevelId));
        Assert.Equal("2", session.GridOf(SampleLesson.Ada).TextOf(Level));
    }

    private static (ResultsSession Session, EntriesOnlyStore Store) Open()
    {
        var (store, inside) = EntriesOnlyStore.Create();
        return (SessionOver(store), inside);
    }

    private static ResultsSession SessionOver(IStore store) =>
        new(store, SampleLesson.Record(SampleLesson.Sheet()), new TickingClock(), CultureInfo.GetCultureInfo("en-GB"));
}
