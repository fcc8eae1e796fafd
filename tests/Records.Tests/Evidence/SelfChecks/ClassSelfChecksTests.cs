using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.SelfChecks;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence.SelfChecks;

public sealed class ClassSelfChecksTests
{
    private static LessonBuilder Lesson() => new LessonBuilder().Pupils("Ada", "Ben", "Cem")
        .Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null)).Task(2, "Bridge", ["hips high"], (1, 3, null));

    private static ClassSelfChecks Of(LessonBuilder lesson)
    {
        var evidence = LessonEvidence.Of(lesson.Record());
        var checks = ClassSelfChecks.Of(evidence.Pupils, evidence.Tasks);
        // The same pairs, counted a second way.
        Assert.Equal(evidence.Class.TickAgreement.ComparedCount, checks.Whole.Agreement.Table.PairCount);
        // In whole numbers there and in fractions here: a few roundings apart.
        Assert.Equal(evidence.Class.TickAgreement.KappaFraction ?? 9, checks.Whole.Agreement.Kappa.ValueFraction ?? 9, 1e-12);
        return checks;
    }

    [Fact]
    public void Of_NothingCheckedByBoth_IsEmptyAndSaysSo()
    {
        // A pupil's tick alone and a teacher's check alone compare nothing.
        var lesson = Lesson().Set("Ada", 1, level: 1, cues: "1").Set("Ben", 1, level: 1);
        lesson.Add("Ben", 1, 1, new TeacherCheck(1, true, true));
        var checks = Of(lesson);
        Assert.Empty(checks.Cues);
        Assert.Equal((0, null), (checks.Whole.Agreement.Table.PairCount, checks.Whole.Agreement.AgreedRange));
        Assert.True(checks.Whole.Agreement.Cautions.HasFlag(AgreementCautions.NoPairs));
    }

    [Fact]
    public void Of_ChecksOfBoth_AreCountedCueByCue()
    {
        var lesson = Lesson()
            .Set("Ada", 1, level: 1, cues: "1 2").Set("Ada", 2, level: 1, cues: "1").Set("Ben", 1, level: 1, cues: "2").Set("Ben", 1, level: 1, cues: "1", task: 2);
        lesson.Add("Ada", 1, 1, new TeacherCheck(1, true, true));
        lesson.Add("Ada", 1, 1, new TeacherCheck(2, false, false));
        var ticked = lesson.Add("Ada", 1, 2, new TeacherCheck(1, false, true));
        lesson.Add("Ben", 1, 1, new TeacherCheck(1, true, true));
        lesson.Add("Ben", 2, 1, new TeacherCheck(1, true, true));

        var checks = Of(lesson);

        // By hand: cue 1 of the V-sit is both, only the pupil, only the teacher; cue 2 only the pupil; the bridge's both.
        Assert.Equal([(1, 1), (1, 2), (2, 1)], checks.Cues.Select(c => (c.TaskNumber, c.CueNumber)));
        Assert.Equal(["chest up", "toes long", "hips high"], checks.Cues.Select(c => c.Text));
        Assert.Equal([(3, 1, 1, 1), (1, 0, 1, 0), (1, 1, 0, 0)], checks.Cues.Select(c =>
            (c.Agreement.Table.PairCount, c.Agreement.Table.AgreedCount, c.Agreement.Balance.OverCount, c.Agreement.Balance.UnderCount)));
        Assert.Equal([3, 0, 1], checks.Cues.Select(c => c.BlindCount));
        Assert.Equal([2, 1, 1], checks.Cues.Select(c => c.Agreement.PupilCount));
        Assert.Contains(ticked.Id, checks.Cues[0].EntryIds);
        Assert.Equal(5, checks.Whole.Agreement.Table.PairCount);
    }

    [Fact]
    public void Of_EverythingTickedAndSeen_IsNotDefinedRatherThanPerfect()
    {
        var lesson = Lesson();
        foreach (var name in new[] { "Ada", "Ben", "Cem" })
        {
            lesson.Set(name, 1, level: 1, cues: "1");
            lesson.Add(name, 1, 1, new TeacherCheck(1, true, true));
        }
        var cue = Assert.Single(Of(lesson).Cues).Agreement;
        Assert.Null(cue.Kappa.ValueFraction);
        Assert.True(cue.Kappa.Cautions.HasFlag(AgreementCautions.OneCategory));
        Assert.Equal(1, cue.Gwet.ValueFraction);
    }
}
