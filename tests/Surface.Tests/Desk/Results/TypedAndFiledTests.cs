using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Surface.Tests.Desk.Results;

public sealed class TypedAndFiledTests
{
    [Fact]
    public void Write_SheetTypedOrReadFromAFile_HoldsTheSame()
    {
        var typed = new Typist(SampleLesson.Sheet()).Press("241101113h{Enter}" + "3311100123s{Enter}" + "351010{Right}-e").Leave();
        const string file = """
            pupil,set,level,prediction,trials,cues,decision
            7B-01,1,2,4,1 1 0 1 1,1 3,harder
            7B-01,2,3,3,1 1 1 0 0,1 2 3,same
            7B-01,3,3,5,1 0 1 0,-,easier
            """;
        AssertSame(typed, file, SampleLesson.Record(SampleLesson.Sheet()));
    }

    [Fact]
    public void Write_TimesTypedOrReadFromAFile_AreJudgedAlike()
    {
        var sheet = SampleLesson.Sheet(PredictionKind.HoldS, trialCount: 3, setCount: 1);
        var typed = new Typist(sheet, isTimed: true).Press("27.5 5 4.99 +0s").Leave();
        const string file = """
            pupil,set,level,prediction,trials,cues,decision
            7B-01,1,2,7.5,5s 4.99s 1,-,same
            """;
        AssertSame(typed, file, SampleLesson.Record(sheet));
    }

    private static void AssertSame(Typist typed, string file, LessonRecord record)
    {
        var recorder = new Recorder(record.School.Id, record.Lesson.Id, EntrySource.File, "file", new TickingClock(), []);
        var filed = EntryFile.Read("results.csv", file, record, recorder);
        Assert.DoesNotContain(filed.Findings, f => f.IsRefused);
        Assert.Equal(Held(filed.Entries), Held(typed.Log));
    }

    private static IEnumerable<(EntrySlot Slot, EntryFact Fact)> Held(IEnumerable<Entry> log) => EntryLog.Current(log)
        .Select(entry => (Slot: EntrySlot.Of(entry), entry.Fact))
        .OrderBy(held => held.Slot.SetNumber)
        .ThenBy(held => held.Slot.Kind, StringComparer.Ordinal)
        .ThenBy(held => held.Slot.TrialNumber)
        .ThenBy(held => held.Slot.CueNumber);
}
