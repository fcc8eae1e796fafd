using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Tests.Checks;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Entries;

public sealed class EntryFileLawTests
{
    private static readonly Gen<double?> Seconds = Gen.OneOf(Gen.Const((double?)null), Gen.Double[0, 600].Select(s => (double?)s), Gen.Int[0, 60].Select(s => (double?)(s / 10.0)));

    private static readonly Gen<string> Reasons = Gen.OneOf("", "tired", "=1+1", "'quoted", "-", " spaces ", "a \"word\", and more", "two\nlines", "más", "''", "@x;y\tz");

    /// <summary>Anything a sheet can hold: one fact with its pupil, task, set and trial.</summary>
    private static readonly Gen<(Guid Pupil, Guid Task, int Set, int? Trial, EntryFact Fact)> Said = Gen.Select(
        Gen.OneOf(Alba.Id, Bruno.Id, Carys.Id), Gen.Bool, Gen.Int[1, 3], Gen.Int[1, 5], Gen.Bool, Seconds, Reasons, Gen.Int[0, 4],
        (pupil, isRope, set, number, isOn, heldS, reason, kind) => (
            pupil,
            isRope ? RopeId : BalanceId,
            set,
            kind == 2 ? number : (int?)null,
            kind switch
            {
                0 => new Choice(isRope ? RopeLevels[number % 2].Id : BalanceLevels[number % 4].Id),
                1 => heldS is null ? new Prediction(number, null) : new Prediction(null, heldS),
                2 => new Trial(isOn, heldS),
                3 => new CueTick(number % 2 + 1, isOn),
                _ => (EntryFact)new Decision((NextLevel)(number % 3 + 1), reason),
            }));

    private static readonly Gen<string> Wild = Gen.OneOf(
        Gen.String,
        Gen.String[Gen.Char["A1B2,;\t\"\r\n 0123456789.s/-?{}[]:=same"], 0, 120],
        Gen.String[Gen.Char["A1B2,\"\n 012.s/-?e"], 0, 80].Select(s => "pupil,task,set,level,prediction,trials,cues,decision,reason\n" + s),
        Gen.String[Gen.Char["A1B2 012.s/-?e"], 0, 20].Select(s => $"pupil,task,set,level,prediction,trials,cues,decision,reason\nA1,1,1,1,{s},{s},{s},{s},{s}\n"));

    [Fact]
    public void WriteCsv_AnySheet_ReadBackSaysTheSame() =>
        Said.List[0, 60].Sample(said =>
        {
            var recorder = RecorderOf(Taught, EntrySource.Desk);
            var record = Taught.With(said.Select(s => recorder.Put(s.Pupil, s.Task, s.Set, s.Trial, s.Fact)));
            var text = EntryFile.WriteCsv(record);

            var reading = EntryFile.Read("back.csv", text, Taught, RecorderOf(Taught));
            Assert.True(reading.CanAppend, text);
            Assert.Equal(Facts(record.Entries), Facts(reading.Entries));
            Assert.Equal(text, EntryFile.WriteCsv(Taught.With(reading.Entries)));
        });

    [Fact]
    public void Read_SameFileTwice_TheSecondAddsNothing() =>
        Said.List[0, 40].Sample(said =>
        {
            var recorder = RecorderOf(Taught);
            var text = EntryFile.WriteCsv(Taught.With(said.Select(s => recorder.Put(s.Pupil, s.Task, s.Set, s.Trial, s.Fact))));
            var first = EntryFile.Read("results.csv", text, Taught, RecorderOf(Taught));
            var record = Taught.With(first.Entries);
            var second = EntryFile.Read("results.csv", text, record, RecorderOf(record));
            Assert.Empty(second.Entries);
            Assert.True(second.CanAppend);
        });

    [Fact]
    public void WriteJsonLines_AnyLog_ReadBackIsTheSameLog() =>
        Said.List[0, 30].Sample(said =>
        {
            var recorder = RecorderOf(Taught, EntrySource.Floor);
            var log = said.Select(s => recorder.Put(s.Pupil, s.Task, s.Set, s.Trial, s.Fact)).OfType<Entry>().ToList();
            if (log.Count == 0) return;
            var reading = EntryFile.Read("log.jsonl", EntryFile.WriteJsonLines(log), Taught, RecorderOf(Taught));
            Assert.Equal(log, reading.Entries);
        });

    [Fact]
    public void Read_AnyText_NeverThrowsAndSpeaksWholeSentences() =>
        Gen.Select(Wild, Gen.OneOf("a.csv", "a.jsonl", "a")).Sample((text, name) =>
        {
            var reading = EntryFile.Read(name, text, Taught, RecorderOf(Taught));
            Sentences.AreWhole(reading.Findings);
            Assert.True(reading.RefusedRowCount <= reading.RowCount);
        });

    [Fact]
    public void Read_JsonLineWithAnyTextPutIn_NeverThrows()
    {
        var line = EntryFile.WriteJsonLines([RecorderOf(Taught, EntrySource.Floor).Put(Alba.Id, BalanceId, 1, 2, new Trial(true, 3.5))!]);
        Gen.Select(Gen.Int[0, line.Length], Gen.Int[0, 12], Gen.String[Gen.Char["{}[]\":,0123456789eE+-.nulltrue x"], 0, 8]).Sample((at, length, text) =>
        {
            var broken = line[..at] + text + line[Math.Min(at + length, line.Length)..];
            Sentences.AreWhole(EntryFile.Read("a.jsonl", broken, Taught, RecorderOf(Taught)).Findings);
        });
    }

    private static IEnumerable<string> Facts(IEnumerable<Entry> entries) => EntryLog.Current(entries)
        .Select(e => $"{e.PupilId} {e.TaskId} {e.SetNumber} {e.TrialNumber} {e.Fact}").Order(StringComparer.Ordinal);
}
