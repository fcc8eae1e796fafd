using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.SelfChecks;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Tests.Evidence.SelfChecks;

public sealed class ObserverChecksTests
{
    private static LessonBuilder Lesson() => new LessonBuilder().Pupils("Ada", "Ben", "Cem").Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null));

    // The same check from another device, as it would arrive from a colleague's phone.
    private static LessonRecord With(LessonBuilder lesson, params (string Pupil, int Cue, bool First, bool Second)[] checks)
    {
        var second = new List<Guid>();
        foreach (var (pupil, cue, first, other) in checks)
        {
            lesson.Add(pupil, 1, 1, new TeacherCheck(cue, first, true));
            second.Add(lesson.Add(pupil, 1, 1, new TeacherCheck(cue, other, true)).Id);
        }
        var record = lesson.Record();
        return record with { Entries = [.. record.Entries.Select(e => second.Contains(e.Id) ? e with { DeviceId = "phone" } : e)] };
    }

    [Fact]
    public void Of_OneDevice_IsNone()
    {
        var lesson = Lesson();
        lesson.Add("Ada", 1, 1, new TeacherCheck(1, true, true));
        lesson.Add("Ada", 1, 1, new TeacherCheck(1, false, true));
        Assert.Null(ObserverChecks.Of([lesson.Record()]));
        Assert.Null(ObserverChecks.Of([]));
    }

    [Fact]
    public void Of_TwoDevices_AreComparedCueByCue()
    {
        var checks = ObserverChecks.Of([With(Lesson(), ("Ada", 1, true, true), ("Ada", 2, true, false), ("Ben", 1, false, false), ("Cem", 1, true, true))])!;
        var table = checks.Agreement.Table;
        Assert.Equal((4, 3, 3, 2), (table.PairCount, table.AgreedCount, checks.Agreement.PupilCount, checks.CueCount));
        // By hand: both saw it twice of the three times either did; both missed it once of two.
        Assert.Equal((2 / 3.0, 1 / 2.0), (checks.Seen.OccurrenceFraction!.Value, checks.Seen.AbsenceFraction!.Value));
        Assert.Equal(8, checks.EntryIds.Distinct().Count());
    }

    [Fact]
    public void Of_ACorrectionFromAnotherDevice_IsNoSecondView()
    {
        var lesson = Lesson();
        var first = lesson.Add("Ada", 1, 1, new TeacherCheck(1, true, true));
        var corrected = lesson.Add("Ada", 1, 1, new TeacherCheck(1, false, true), supersedes: first.Id);
        var record = lesson.Record();
        Assert.Null(ObserverChecks.Of([record with { Entries = [.. record.Entries.Select(e => e.Id == corrected.Id ? e with { DeviceId = "phone" } : e)] }]));
    }

    [Fact]
    public void Of_EverythingMet_KappaIsNotDefined()
    {
        var checks = ObserverChecks.Of([With(Lesson(), ("Ada", 1, true, true), ("Ben", 1, true, true))])!;
        Assert.Equal((null, 1.0), (checks.Agreement.Kappa.ValueFraction, checks.Agreement.Gwet.ValueFraction));
        Assert.Null(checks.Seen.AbsenceFraction);
    }
}
