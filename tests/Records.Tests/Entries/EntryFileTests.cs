using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Tests.Checks;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Entries;

public sealed class EntryFileTests
{
    private const string Heading = "pupil,task,set,level,prediction,trials,cues,decision,reason\n";

    public static TheoryData<string, string, int?, string?> Bad => new()
    {
        { "", "FileEmpty", null, null },
        { "task,set\n1,1\n", "ColumnMissing", null, null },
        { "pupil,set,trials,trial1\nA1,1,1,1\n", "TrialsWrittenTwice", null, null },
        { Heading + "ZZ,1,1,1,,,,,\n", "PupilCodeUnknown", 2, "pupil" },
        { Heading + ",1,1,1,,,,,\n", "FieldMissing", 2, "pupil" },
        { Heading + "A1,,1,1,,,,,\n", "TaskNotNamed", 2, "task" },
        { Heading + "A1,3,1,1,,,,,\n", "TaskUnknown", 2, "task" },
        { Heading + "A1,1,,1,,,,,\n", "FieldMissing", 2, "set" },
        { Heading + "A1,1,4,1,,,,,\n", "EntrySetUnknown", 2, "set" },
        { Heading + "A1,1,1,5,,,,,\n", "LevelNumberUnknown", 2, "level" },
        { Heading + "A1,1,1,1,6,,,,\n", "EntryPredictionAboveTrials", 2, "prediction" },
        { Heading + "A1,1,1,1,-1,,,,\n", "EntryPredictionNegative", 2, "prediction" },
        { Heading + "A1,1,1,1,some,,,,\n", "PredictionUnreadable", 2, "prediction" },
        { Heading + "A1,1,1,1,1,1 0 x,,,\n", "TrialUnreadable", 2, "trials" },
        { Heading + "A1,1,1,1,1,601s,,,\n", "EntryHeldOutside", 2, "trials" },
        { Heading + "A1,1,1,1,1,1 1 1 1 1 1,,,\n", "EntryTrialUnknown", 2, "trials" },
        { Heading + "A1,1,1,,1,4s,,,\n", "TrialTimedWithoutLevel", 2, "trials" },
        { Heading + "A1,2,1,1,1,4s,,,\n", "TrialTimedWithoutHold", 2, "trials" },
        { Heading + "A1,1,1,1,1,1,4,,\n", "CueUnreadable", 2, "cues" },
        { Heading + "A1,1,1,1,1,1,- 1,,\n", "CueUnreadable", 2, "cues" },
        { Heading + "A1,1,1,1,1,1,1,up,\n", "FieldNotOneOf", 2, "decision" },
        { Heading + "A1,1,1,1,1,1,1,,why\n", "ReasonWithoutDecision", 2, "reason" },
        { Heading + "A1,1,1,1,1,1,,,\nA1,1,1,2,1,1,,,\n", "EntryRowTwice", 3, null },
        { Heading + "A1,1,1,1,1,1,,\n", "RowFieldCount", 2, null },
        { Heading + "A1,1,1,1,1,1,,same,\"oh\n", "RowQuoteOpen", 2, null },
    };

    [Fact]
    public void Read_WholeRow_SaysEverythingOnTheSheet()
    {
        var reading = Read(Heading + "a1,one-foot BALANCE,1,2,3,1 0 4.2s 3.9s -,1 3,harder,\"steady, at last\"\n");
        Assert.Empty(reading.Findings);
        Assert.Equal((1, 0, true), (reading.RowCount, reading.RefusedRowCount, reading.CanAppend));
        Assert.All(reading.Entries, e => Assert.Equal((Alba.Id, BalanceId, 1, EntrySource.File), (e.PupilId, e.TaskId, e.SetNumber, e.Source)));
        Assert.Equal<EntryFact>(
            [
                new Choice(BalanceLevels[1].Id), new Prediction(3, null), new Trial(true), new Trial(false), new Trial(true, 4.2), new Trial(false, 3.9),
                new CueTick(1, true), new CueTick(2, false), new CueTick(3, true), new Decision(NextLevel.Harder, "steady, at last"),
            ],
            reading.Entries.Select(e => e.Fact));
        Assert.Equal([1, 2, 3, 4], reading.Entries.Where(e => e.Fact is Trial).Select(e => e.TrialNumber!.Value));
    }

    [Fact]
    public void Read_SpanishHeadingsAndSingleTrials_AreUnderstood()
    {
        var reading = Read("código;tarea;serie;nivel;pronóstico;intento1;intento3;claves;decisión;motivo\nB2;2;1;2;2;1;0;-;más fácil;cansado\n");
        Assert.Empty(reading.Findings);
        Assert.Equal<EntryFact>(
            [
                new Choice(RopeLevels[1].Id), new Prediction(2, null), new Trial(true), new Trial(false),
                new CueTick(1, false), new CueTick(2, false), new Decision(NextLevel.Easier, "cansado"),
            ],
            reading.Entries.Select(e => e.Fact));
        Assert.Equal([1, 3], reading.Entries.Where(e => e.Fact is Trial).Select(e => e.TrialNumber!.Value));
    }

    [Fact]
    public void Read_HoldExactlyTheDose_IsASuccess() =>
        Assert.Contains(Read(Heading + "A1,1,1,2,,4.0s,,,\n").Entries, e => e.Fact == new Trial(true, 4));

    [Fact]
    public void Read_CommaSeconds_AreSeconds() =>
        Assert.Contains(Read("pupil;task;set;level;trials\nA1;1;1;2;4,25s\n").Entries, e => e.Fact == new Trial(true, 4.25));

    [Fact]
    public void Read_TimeForALevelEnteredBefore_UsesThatLevel()
    {
        var record = Taught.With(RecorderOf(Taught, EntrySource.Desk).Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[2].Id)));
        var reading = EntryFile.Read("times.csv", "pupil,task,set,trials\nA1,1,1,4.9s 5s\n", record, RecorderOf(record));
        Assert.Equal<EntryFact>([new Trial(false, 4.9), new Trial(true, 5)], reading.Entries.Select(e => e.Fact));
    }

    [Fact]
    public void Read_AnotherWord_SupersedesTheFirst()
    {
        var first = Read(Heading + "A1,1,1,1,3,,,,\n");
        var record = Taught.With(first.Entries);
        var second = EntryFile.Read("results.csv", Heading + "A1,1,1,2,3,,,,\n", record, RecorderOf(record));
        var entry = Assert.Single(second.Entries);
        Assert.Equal((new Choice(BalanceLevels[1].Id), (Guid?)first.Entries[0].Id), ((Choice)entry.Fact, entry.SupersedesId));
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void Read_BadRow_IsNamedWithItsPlaceAndNothingOfItIsTaken(string text, string key, int? line, string? column)
    {
        var reading = EntryFile.Read("results.csv", text, Taught, RecorderOf(Taught));
        var refused = reading.Findings.First(f => f.IsRefused);
        Assert.Equal((key, "results.csv", line, column), (refused.Key, refused.InFile!.File, refused.InFile.LineNumber, refused.InFile.Column));
        Assert.False(reading.CanAppend);
        Assert.True(reading.Entries.Count <= 3, "Only the good row before a bad one may give entries.");
        Sentences.AreWhole(reading.Findings);
    }

    [Fact]
    public void Read_GoodRowsBesideBadOnes_AreThereForWhoeverAsks()
    {
        var reading = Read(Heading + "A1,1,1,1,3,1,,,\nZZ,1,1,1,3,1,,,\nB2,1,1,1,3,1,,,\n");
        Assert.False(reading.CanAppend);
        Assert.Equal((3, 1), (reading.RowCount, reading.RefusedRowCount));
        Assert.Equal([Alba.Id, Bruno.Id], reading.Entries.Select(e => e.PupilId!.Value).Distinct());
    }

    [Fact]
    public void Read_TrialsWithoutChoice_IsFlaggedWithThePupil()
    {
        var reading = Read(Heading + "A1,1,1,,3,1 1,,,\n");
        Assert.True(reading.CanAppend);
        var flagged = Assert.Single(reading.Findings);
        Assert.Equal(("TrialsWithoutChoice", "Alba"), (flagged.Key, flagged.OnSheet!.PupilLabel));
    }

    [Fact]
    public void Read_LevelNotOffered_IsFlaggedWithItsLineAndKept()
    {
        var record = Taught with { Restrictions = [new() { SchoolId = SchoolId, Id = Id(5), PupilId = Alba.Id, Without = BodyDemand.HandWeight }] };
        var reading = EntryFile.Read("results.csv", Heading + "A1,1,1,4,3,1,,,\n", record, RecorderOf(record));
        Assert.True(reading.CanAppend);
        Assert.Contains(reading.Entries, e => e.Fact == new Choice(BalanceLevels[3].Id));
        var flagged = Assert.Single(reading.Findings);
        Assert.Equal(("ChoiceNotOffered", 2), (flagged.Key, flagged.InFile!.LineNumber));
    }

    [Fact]
    public void Read_LessonWithoutSheet_IsRefused()
    {
        var record = Taught with { Sheet = null };
        var reading = EntryFile.Read("results.csv", Heading + "A1,1,1,1,3,1,,,\n", record, RecorderOf(record));
        Assert.Equal("EntryWithoutSheet", Assert.Single(reading.Findings).Key);
        Assert.Empty(reading.Entries);
    }

    [Fact]
    public void Read_SheetWithOneTask_NeedsNoTaskColumn()
    {
        var record = Taught with { Sheet = Taught.Sheet! with { Content = Towers with { Tasks = [Towers.Tasks[0]] } } };
        var reading = EntryFile.Read("results.csv", "pupil,set,level\nA1,1,1\n", record, RecorderOf(record));
        Assert.Empty(reading.Findings);
        Assert.Equal(BalanceId, Assert.Single(reading.Entries).TaskId);
    }

    [Fact]
    public void Read_JsonLines_KeepIdsAndTakeEachOnce()
    {
        var recorder = RecorderOf(Taught, EntrySource.Floor);
        Entry[] entries =
        [
            recorder.Put(Alba.Id, null, null, null, new Presence(true))!,
            recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!,
            recorder.Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[1].Id))!,
            recorder.Put(null, null, null, null, new PhaseMark(PhaseKind.Activity))!,
            recorder.Put(Alba.Id, null, null, null, new Visit(VisitTopic.Cue, VisitForm.Asked, "ok"))!,
            recorder.Put(null, null, null, null, new EngagementScan(24, 27))!,
            recorder.Put(Alba.Id, BalanceId, null, null, new Note("left arm"))!,
        ];
        var text = EntryFile.WriteJsonLines(entries);
        Assert.Contains("\"kind\":\"choice\"", text);
        var reading = EntryFile.Read("log.jsonl", text + text, Taught, RecorderOf(Taught));
        Assert.Empty(reading.Findings);
        Assert.Equal(entries, reading.Entries);
        Assert.Empty(EntryFile.Read("log.jsonl", text, Taught.With(entries), RecorderOf(Taught)).Entries);
    }

    [Theory]
    [InlineData("{", "JsonLineUnreadable", null)]
    [InlineData("{}", "JsonLineUnreadable", null)]
    [InlineData("null", "JsonLineUnreadable", null)]
    [InlineData("[1]", "JsonLineUnreadable", null)]
    public void Read_BrokenJsonLine_IsNamedWithItsLine(string line, string key, string? column)
    {
        var reading = EntryFile.Read("log.jsonl", "\n" + line + "\n", Taught, RecorderOf(Taught));
        var refused = Assert.Single(reading.Findings);
        Assert.Equal((key, 2, column), (refused.Key, refused.InFile!.LineNumber, refused.InFile.Column));
        Sentences.AreWhole(reading.Findings);
    }

    [Theory]
    [InlineData("\"kind\":\"choice\"", "\"kind\":\"wish\"")]
    [InlineData("\"kind\":\"choice\",", "")]
    [InlineData("\"source\":\"floor\"", "\"source\":\"air\"")]
    [InlineData("\"source\":\"floor\"", "\"source\":7")]
    [InlineData("\"deviceId\":\"test\"", "\"deviceId\":null")]
    [InlineData("\"deviceId\":\"test\"", "\"device\":\"test\"")]
    [InlineData("\"setNumber\":1", "\"setNumber\":1.5")]
    [InlineData("\"levelId\":\"", "\"levelId\":\"x")]
    public void Read_JsonLineWithAWrongPart_IsRefusedAndNeverThrows(string from, string to)
    {
        var line = EntryFile.WriteJsonLines([RecorderOf(Taught, EntrySource.Floor).Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!]);
        Assert.Contains(from, line);
        var reading = EntryFile.Read("log.jsonl", line.Replace(from, to), Taught, RecorderOf(Taught));
        Assert.Equal("JsonLineUnreadable", Assert.Single(reading.Findings).Key);
        Assert.Empty(reading.Entries);
    }

    [Theory]
    [InlineData("{\"kind\":\"prediction\",\"successCount\":3}", true)]
    [InlineData("{\"kind\":\"cueTick\",\"cueNumber\":1}", false)]
    public void Read_JsonFactWithAPartLeftOut_TakesOnlyPartsThatMayBeEmpty(string fact, bool isTaken)
    {
        var line = EntryFile.WriteJsonLines([RecorderOf(Taught, EntrySource.Floor).Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!]);
        var at = line.IndexOf("{\"kind\"", StringComparison.Ordinal);
        var text = line[..at] + fact + line[(line.IndexOf('}', at) + 1)..];
        Assert.Equal(isTaken, EntryFile.Read("log.jsonl", text, Taught, RecorderOf(Taught)).CanAppend);
    }

    [Fact]
    public void Read_JsonIdWithOtherContent_IsRefused()
    {
        var known = RecorderOf(Taught).Put(Alba.Id, BalanceId, 1, null, new Choice(BalanceLevels[0].Id))!;
        var text = EntryFile.WriteJsonLines([known with { SetNumber = 2 }]);
        var reading = EntryFile.Read("log.jsonl", text, Taught.With(known), RecorderOf(Taught));
        Assert.Equal("EntryIdTaken", Assert.Single(reading.Findings).Key);
    }

    private static EntryReading Read(string text) => EntryFile.Read("results.csv", text, Taught, RecorderOf(Taught));
}
