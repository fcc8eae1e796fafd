using Slantwise.Records.Entries;
using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

/// <summary>That there is something to find in the invented school, for the seed the program loads and for others.</summary>
public sealed class DemoSchoolEvidenceTests
{
    private static readonly DateOnly Today = new(2026, 3, 11);

    public static TheoryData<ulong> Seeds => [1, 2, 3];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_OverPredictor_ExpectsTooMuchAcrossSets(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        Assert.All(Bent(demo, bent => bent.BiasLogits > 2), pupil =>
        {
            var errors = PredictionErrors(demo, pupil);
            Assert.True(errors.Count(e => e >= 2) >= 2, $"At least two predictions 2 or more too high: {string.Join(' ', errors)}");
            Assert.True(errors.Average() > 1, $"Mean error above 1: {string.Join(' ', errors)}");
        });
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_StuckPupil_StaysWhereHardlyAnythingWorks(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        Assert.All(Bent(demo, bent => bent.ChangeFraction == 0 && bent.AbilityLogits < 0), pupil =>
        {
            var own = demo.Entries.Where(e => e.PupilId == pupil).ToList();
            Assert.All(own.Select(e => e.Fact).OfType<Decision>(), d => Assert.Equal(NextLevel.Same, d.Next));
            Assert.True(SuccessShare(own) < 0.4, $"Success share {SuccessShare(own)}");
        });
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_ComfortablePupil_StaysWhereEverythingWorks(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        Assert.All(Bent(demo, bent => bent.ChangeFraction == 0 && bent.AbilityLogits > 0), pupil =>
        {
            var own = demo.Entries.Where(e => e.PupilId == pupil).ToList();
            Assert.True(SuccessShare(own) > 0.85, $"Success share {SuccessShare(own)}");
        });
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_BentCue_StaysUntickedMoreThanAnyOtherOfItsTask(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        var bents = demo.Simulations[0].Plan.CueBents;
        Assert.NotEmpty(bents);
        Assert.All(bents, bent =>
        {
            var open = demo.Entries.Where(e => e.TaskId == bent.TaskId && e.Fact is CueTick)
                .GroupBy(e => ((CueTick)e.Fact).CueNumber, e => ((CueTick)e.Fact).IsTicked ? 0.0 : 1.0)
                .ToDictionary(g => g.Key, g => g.Average());
            Assert.Equal(bent.CueNumber, open.MaxBy(cue => cue.Value).Key);
        });
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_UnlovedLevel_NobodyChoosesIt(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        var unloved = Assert.Single(demo.Simulations[0].Plan.LevelBents, bent => bent.Value.PullLogits < -20).Key;
        Assert.DoesNotContain(demo.Entries, e => e.Fact is Choice choice && choice.LevelId == unloved);
        Assert.Contains(demo.Lessons, l => demo.FrozenContents[l.SheetId!.Value].Any(c => c.Tasks.Any(t => t.Levels.Any(level => level.Id == unloved))));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_DoubledLevel_IncludesNobodyWhoWasNotInAlready(ulong seed)
    {
        var demo = DemoSchool.Of(seed, Today);
        foreach (var truth in demo.Simulations.Select(s => s.Truth))
        {
            // Two levels of one task a tenth of a logit apart: a chance of 60 % at the harder one is a chance of 60 % at the easier one too.
            var doubled = truth.Levels.GroupBy(l => l.TaskId).SelectMany(task => task.Zip(task.Skip(1)))
                .Where(pair => Math.Abs(pair.First.DifficultyLogits - pair.Second.DifficultyLogits) <= 0.1001 && pair.First.DifficultyLogits < -2);
            var (easier, harder) = Assert.Single(doubled);
            var included = truth.Pupils.Count(p => Included(p, harder));
            Assert.NotEqual(0, included);
            Assert.All(truth.Pupils.Where(p => Included(p, harder)), p => Assert.True(Included(p, easier)));
        }

        static bool Included(PupilTruth pupil, LevelTruth level) => pupil.AbilityLogits[level.Family] - level.DifficultyLogits >= Math.Log(0.6 / 0.4);
    }

    private static List<Guid> Bent(DemoSchool demo, Func<PupilBent, bool> which)
    {
        var found = demo.Simulations.SelectMany(s => s.Plan.PupilBents).Where(b => which(b.Value)).Select(b => b.Key).ToList();
        Assert.Equal(2, found.Count);
        return found;
    }

    private static double SuccessShare(IEnumerable<Entry> entries) =>
        EntryLog.Current(entries).Select(e => e.Fact).OfType<Trial>().Average(t => t.IsSuccess ? 1.0 : 0.0);

    private static List<int> PredictionErrors(DemoSchool demo, Guid pupil) => demo.Entries
        .Where(e => e.PupilId == pupil)
        .GroupBy(e => (e.LessonId, e.TaskId, e.SetNumber))
        .Select(set => EntryLog.Current(set))
        .Where(set => set.Any(e => e.Fact is Prediction { SuccessCount: not null }))
        .Select(set => set.Select(e => e.Fact).OfType<Prediction>().Single().SuccessCount!.Value - set.Count(e => e.Fact is Trial { IsSuccess: true }))
        .ToList();
}
