using System.Globalization;
using CsCheck;
using Slantwise.Desk.Pages.Results;
using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Desk.Results;

public sealed class ResultsGridTests
{
    private static readonly Guid[] BalanceLevels = [.. SampleLesson.Balance.Levels.Select(level => level.Id)];

    [Fact]
    public void Write_WholeSheetTyped_MakesExactlyItsEntries()
    {
        // 11 keys a set: level, prediction, five trials, two cues, the letter of the decision, Enter; the last set needs no Enter.
        var typist = new Typist(SampleLesson.Sheet()).Press("241101113h{Enter}" + "3311100123s{Enter}" + "3310101-s");

        EntryFact[] expected =
        [
            new Choice(BalanceLevels[1]), new Prediction(4, null),
            new Trial(true), new Trial(true), new Trial(false), new Trial(true), new Trial(true),
            new CueTick(1, true), new CueTick(2, false), new CueTick(3, true), new Decision(NextLevel.Harder),
            new Choice(BalanceLevels[2]), new Prediction(3, null),
            new Trial(true), new Trial(true), new Trial(true), new Trial(false), new Trial(false),
            new CueTick(1, true), new CueTick(2, true), new CueTick(3, true), new Decision(NextLevel.Same),
            new Choice(BalanceLevels[2]), new Prediction(3, null),
            new Trial(true), new Trial(false), new Trial(true), new Trial(false), new Trial(true),
            new CueTick(1, false), new CueTick(2, false), new CueTick(3, false), new Decision(NextLevel.Same),
        ];
        Assert.Equal(expected, typist.Log.Select(e => e.Fact));
        Assert.Equal(Enumerable.Repeat<int?[]>([1, 2, 3], 11).SelectMany(s => s).Order(), typist.Log.Select(e => e.SetNumber));
        Assert.All(typist.Log, e => Assert.Equal(SampleLesson.Ada.Id, e.PupilId));
        Assert.All(typist.Log, e => Assert.Null(e.SupersedesId));
        Assert.Equal([1, 2, 3, 4, 5], typist.Log.Where(e => e.SetNumber == 2 && e.Fact is Trial).Select(e => e.TrialNumber!.Value));
    }

    [Fact]
    public void Write_AnyKeysPressed_LogHoldsWhatCellsShow()
    {
        var keys = OneOf(
            "0", "1", "2", "3", "4", "5", "7", "9", ".", ",", "+", "-", "s", "h", "e", "S", "x", "ñ", " ", "{Enter}", "{Left}", "{Right}", "{Up}", "{Down}",
            "{Back}", "{Back}", "{Esc}", "{Undo}", "{Undo}", "{Absent}");
        var sheets = Gen.Select(
            OneOf(PredictionKind.Nothing, PredictionKind.SuccessCount, PredictionKind.HoldS), Gen.Int[1, 10], Gen.Int[1, 4], Gen.Bool, Gen.Bool,
            (predicts, trials, sets, hasTwo, isTimed) =>
                (Sheet: SampleLesson.Sheet(predicts, trials, sets, hasTwo ? [SampleLesson.Balance, SampleLesson.Rope] : []), IsTimed: isTimed));
        Gen.Select(sheets, keys.Array[0, 150], OneOf("en-GB", "es-ES")).Sample((sheet, pressed, language) =>
        {
            var typist = new Typist(sheet.Sheet, language, sheet.IsTimed).Press(string.Concat(pressed)).Leave();
            var fresh = new ResultsGrid(sheet.Sheet, SampleLesson.Ada, CultureInfo.GetCultureInfo(language));
            foreach (var task in Enumerable.Range(1, sheet.Sheet.Tasks.Count)) fresh.SetTimed(task, sheet.IsTimed);
            fresh.Take(EntryLog.Current(typist.Log));
            foreach (var cell in typist.Grid.Layout.Cells.Where(cell => typist.Grid.RemarkOn(cell) is null))
            {
                Assert.Equal(fresh.TextOf(cell), typist.Grid.TextOf(cell));
            }
            Assert.Equal(fresh.HeldCount, typist.Grid.HeldCount);
            Assert.Equal(fresh.IsAbsent, typist.Grid.IsAbsent);
        });
    }

    [Fact]
    public void Write_WhatACellShows_ChangesNothing()
    {
        var holds = Gen.Double[0, 600].Select(s => Math.Round(s, 2));
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 5], Gen.Bool, holds.Nullable(), OneOf("en-GB", "es-ES"), Gen.Bool).Sample((level, count, isSuccess, heldS, language, isTimed) =>
        {
            var grid = new ResultsGrid(SampleLesson.Sheet(), SampleLesson.Ada, CultureInfo.GetCultureInfo(language));
            grid.SetTimed(1, isTimed);
            var recorder = RecorderOver([]);
            // A timed trial is a success by its dose; anything else would rightly be put right.
            var trial = heldS is { } s ? new Trial((decimal)s >= SampleLesson.Balance.Levels[level].Dose.Amount, s) : new Trial(isSuccess);
            Entry?[] log =
            [
                Put(new Choice(BalanceLevels[level])), Put(new Prediction(count, null)), Put(trial, 1), Put(new CueTick(1, isSuccess)),
                Put(new CueTick(2, true)), Put(new CueTick(3, false)), Put(new Decision(NextLevel.Easier, "too wobbly")),
            ];
            grid.Take(EntryLog.Current(log.OfType<Entry>()));
            foreach (var cell in grid.Layout.Cells) Assert.Empty(grid.Write(cell, grid.TextOf(cell), recorder).Entries);

            Entry? Put(EntryFact fact, int? trialNumber = null) =>
                recorder.Put(SampleLesson.Ada.Id, SampleLesson.Balance.TaskId, 1, trialNumber, fact);
        });
    }

    [Fact]
    public void Undo_PressedForEveryKey_LeavesNothingHeldAndEverythingLogged()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("241101113h");
        var typedCount = typist.Log.Count;

        typist.Press(string.Concat(Enumerable.Repeat("{Undo}", 20)));

        Assert.Empty(EntryLog.Current(typist.Log));
        Assert.Equal(typedCount * 2, typist.Log.Count);
        Assert.All(typist.Log.Skip(typedCount), e => Assert.IsType<Withdrawal>(e.Fact));
        Assert.Equal(new GridCell(1, 1, CellKind.Level), typist.At);
    }

    [Fact]
    public void Undo_CellOverwritten_PutsBackWhatItHeldBefore()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("2{Left}3");
        Assert.Equal("3", typist.Grid.TextOf(new(1, 1, CellKind.Level)));

        typist.Press("{Undo}");

        Assert.Equal("2", typist.Grid.TextOf(new(1, 1, CellKind.Level)));
        Assert.Equal(typist.Log[1].Id, typist.Log[2].SupersedesId);
    }

    [Fact]
    public void Undo_SomebodyChangedItSince_LeavesTheirWord()
    {
        var (grid, log) = (NewGrid(), new List<Entry>());
        log.AddRange(grid.Write(new(1, 1, CellKind.Level), "2", RecorderOver(log)).Entries);
        var theirs = RecorderOver(log).Put(SampleLesson.Ada.Id, SampleLesson.Balance.TaskId, 1, null, new Choice(BalanceLevels[3]));
        log.Add(theirs!);
        grid.Take(EntryLog.Current(log));

        var write = grid.Undo(RecorderOver(log));

        Assert.Empty(write.Entries);
        Assert.Equal("4", grid.TextOf(new(1, 1, CellKind.Level)));
    }

    [Fact]
    public void Write_CellCleared_TakesItBack()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("2{Left}{Back}").Leave();

        Assert.Equal("", typist.Grid.TextOf(new(1, 1, CellKind.Level)));
        Assert.Empty(EntryLog.Current(typist.Log));
        Assert.Equal(2, typist.Log.Count);
    }

    [Fact]
    public void Write_TimeBeforeLevel_WaitsAndIsSavedWithTheLevel()
    {
        var grid = NewGrid();
        var recorder = RecorderOver([]);
        var early = grid.Write(new(1, 1, CellKind.Trial, 1), "4.2", recorder);
        Assert.Empty(early.Entries);
        Assert.Equal("TimeNeedsLevel", grid.RemarkOn(new(1, 1, CellKind.Trial, 1))!.Key);
        Assert.Equal("4.2", grid.TextOf(new(1, 1, CellKind.Trial, 1)));

        var level = grid.Write(new(1, 1, CellKind.Level), "1", recorder);

        Assert.Equal([new Choice(BalanceLevels[0]), new Trial(true, 4.2)], level.Entries.Select(e => e.Fact));
        Assert.Empty(grid.Unsaved);
    }

    [Fact]
    public void Write_LevelChanged_JudgesTimesByTheNewDose()
    {
        var grid = NewGrid();
        var recorder = RecorderOver([]);
        grid.Write(new(1, 1, CellKind.Level), "1", recorder);
        grid.Write(new(1, 1, CellKind.Trial, 1), "4,2", recorder);
        grid.Write(new(1, 1, CellKind.Trial, 2), "1", recorder);

        var changed = grid.Write(new(1, 1, CellKind.Level), "2", recorder);

        Assert.Equal([new Choice(BalanceLevels[1]), new Trial(false, 4.2)], changed.Entries.Select(e => e.Fact));
    }

    [Fact]
    public void Write_DecisionCleared_KeepsTheReasonInItsCell()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("2smy foot slipped").Leave();
        Assert.Contains(new Decision(NextLevel.Same, "my foot slipped"), EntryLog.Current(typist.Log).Select(e => e.Fact));

        typist.Press("{Left}{Back}").Leave();
        Assert.Equal("my foot slipped", typist.Grid.TextOf(new(1, 1, CellKind.Reason)));
        Assert.Equal("ReasonNeedsDecision", typist.Grid.RemarkOn(new(1, 1, CellKind.Reason))!.Key);

        typist.Press("h").Leave();
        Assert.Contains(new Decision(NextLevel.Harder, "my foot slipped"), EntryLog.Current(typist.Log).Select(e => e.Fact));
    }

    [Theory]
    [InlineData(CellKind.Level, "5", "LevelNotOnSheet")]
    [InlineData(CellKind.Level, "x", "LevelNotOnSheet")]
    [InlineData(CellKind.Prediction, "many", "PredictionNotCount")]
    [InlineData(CellKind.Trial, "600.01", "TrialNotSeconds")]
    [InlineData(CellKind.Trial, "-3", "TrialNotSeconds")]
    [InlineData(CellKind.Cues, "14", "CueNotOnSheet")]
    [InlineData(CellKind.Decision, "x", "DecisionNotLetter")]
    [InlineData(CellKind.Reason, "because", "ReasonNeedsDecision")]
    public void Write_NotUnderstood_StaysInItsCellWithASentence(CellKind kind, string text, string remark)
    {
        var grid = NewGrid();
        var cell = new GridCell(1, 1, kind, kind == CellKind.Trial ? 1 : 0);

        var write = grid.Write(cell, text, RecorderOver([]));

        Assert.Empty(write.Entries);
        Assert.Equal(text, grid.TextOf(cell));
        Assert.Equal(remark, grid.RemarkOn(cell)!.Key);
        Assert.Contains("Not saved", grid.RemarkOn(cell)!.Sentence(CultureInfo.GetCultureInfo("en")), StringComparison.Ordinal);
        Assert.Contains("in guardar", grid.RemarkOn(cell)!.Sentence(CultureInfo.GetCultureInfo("es")), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_PredictionAboveTrials_IsTaken()
    {
        var write = NewGrid().Write(new(1, 1, CellKind.Prediction), "9", RecorderOver([]));
        Assert.Equal([new Prediction(9, null)], write.Entries.Select(e => e.Fact));
    }

    [Fact]
    public void Write_TimeInARopeTask_IsRefused()
    {
        var grid = new ResultsGrid(SampleLesson.Sheet(tasks: [SampleLesson.Rope]), SampleLesson.Ada, CultureInfo.GetCultureInfo("en"));
        grid.Write(new(1, 1, CellKind.Trial, 1), "4.2", RecorderOver([]));
        Assert.Equal("TrialNotMark", grid.RemarkOn(new(1, 1, CellKind.Trial, 1))!.Key);
    }

    [Fact]
    public void Press_SecondsTask_TimesAreLeftByHandAndMarksAdvance()
    {
        var typist = new Typist(SampleLesson.Sheet(PredictionKind.HoldS), isTimed: true).Press("27.5 12 1 0.8 +-");

        Assert.Equal(
            [new Choice(BalanceLevels[1]), new Prediction(null, 7.5), new Trial(true, 12), new Trial(false, 1), new Trial(false, 0.8), new Trial(true), new Trial(false)],
            typist.Log.Select(e => e.Fact));
        Assert.Equal(new GridCell(1, 1, CellKind.Cues), typist.At);
    }

    [Fact]
    public void Press_SpaceInTrial_TogglesAndStays()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("24 ");
        Assert.Equal("1", typist.Grid.TextOf(typist.At));
        typist.Press(" ");
        Assert.Equal("0", typist.Grid.TextOf(typist.At));
        Assert.Equal(new GridCell(1, 1, CellKind.Trial, 1), typist.At);
    }

    [Fact]
    public void Press_SpanishLetters_AreSpanishDecisions()
    {
        var typist = new Typist(SampleLesson.Sheet(), "es-ES").Press("2i{Enter}2d{Enter}2f");
        Assert.Equal(
            [NextLevel.Same, NextLevel.Harder, NextLevel.Easier],
            typist.Log.Select(e => e.Fact).OfType<Decision>().Select(d => d.Next));
    }

    [Fact]
    public void KeepUnsaved_StoreFailed_TextsStayAndAreWrittenAgain()
    {
        var grid = NewGrid();
        var (cell, history) = (new GridCell(1, 1, CellKind.Level), grid.History);
        grid.Write(cell, "2", RecorderOver([]));

        grid.KeepUnsaved([(cell, "2")], [], history);

        Assert.Equal("2", grid.TextOf(cell));
        Assert.Equal(ResultsGrid.NotSaved, grid.RemarkOn(cell)!.Key);
        Assert.Equal(0, grid.HeldCount);
        Assert.True(grid.History.IsEmpty);
        Assert.Single(grid.Write(cell, "2", RecorderOver([])).Entries);
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static ResultsGrid NewGrid() => new(SampleLesson.Sheet(), SampleLesson.Ada, CultureInfo.GetCultureInfo("en-GB"));

    private static Recorder RecorderOver(IReadOnlyList<Entry> log) =>
        new(SampleLesson.School.Id, SampleLesson.LessonId, EntrySource.Desk, ResultsSession.DeviceId, new TickingClock(), log);
}
