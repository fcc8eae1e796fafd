using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Evidence;

public sealed class FlagTests
{
    private static LessonBuilder Lesson() => new LessonBuilder().Pupils("Ada")
        .Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null), (2, 5, null), (3, 5, BodyDemand.HeadWeight));

    private static EvidenceFlag Only(LessonBuilder lesson) =>
        Assert.Single(LessonEvidence.Of(lesson.Record()).Pupils.Single().Flags);

    private static string English(EvidenceFlag flag) => flag.Sentence(CultureInfo.GetCultureInfo("en"));

    [Fact]
    public void Flags_EntriesThatFit_AreNone() =>
        Assert.Empty(LessonEvidence.Of(Lesson()
            .Set("Ada", 1, level: 1, predicted: 3, tries: "3.0s 2.9s 1 0 1", cues: "1", decision: NextLevel.Harder)
            .Set("Ada", 2, level: 2, predicted: 5, tries: "1 1 1 1 1", decision: NextLevel.Same)
            .Set("Ada", 3, level: 2).Record()).Pupils.Single().Flags);

    [Fact]
    public void Flags_TriesWithoutALevel_SaysHowMany()
    {
        var flag = Only(Lesson().Set("Ada", 2, tries: "1 0 1"));
        Assert.Equal("V-sit, set 2: 3 tries and no level written.", English(flag));
        Assert.Equal(3, flag.EntryIds.Count);
    }

    [Fact]
    public void Flags_LevelThePolicyRemoves_SaysWhichLevel() =>
        Assert.Equal("V-sit, set 1: level 3 is not open to this pupil on this day.", English(Only(Lesson().Set("Ada", 1, level: 3))));

    [Fact]
    public void Flags_LevelOfAnotherSheet_SaysSo() =>
        Assert.Equal("V-sit, set 1: the level written is not on this sheet.", English(Only(Lesson().Set("Ada", 1, level: 9))));

    [Fact]
    public void Flags_PredictionAboveTheTries_SaysBoth() =>
        Assert.Equal("V-sit, set 1: 7 predicted of 5 tries.", English(Only(Lesson().Set("Ada", 1, level: 1, predicted: 7))));

    [Fact]
    public void Flags_MoreTriesThanTheSheet_SaysBoth() =>
        Assert.Equal("V-sit, set 1: 6 tries written, the sheet asks for 5.", English(Only(Lesson().Set("Ada", 1, level: 1, tries: "1 1 1 1 1 1"))));

    [Fact]
    public void Flags_TickAgainstTheSeconds_SaysWhichTry()
    {
        var ticked = Lesson().Set("Ada", 1, level: 2);
        ticked.Add("Ada", 1, 1, new Trial(true, 4.2), trial: 3);
        Assert.Equal("V-sit, set 1, try 3: ticked as held, with 4.2 s of 5 s.", English(Only(ticked)));

        var open = Lesson().Set("Ada", 1, level: 2);
        open.Add("Ada", 1, 1, new Trial(false, 6.5), trial: 3);
        Assert.Equal("V-sit, serie 1, intento 3: mantenido 6,5 s de 5 s y sin marcar.", Only(open).Sentence(CultureInfo.GetCultureInfo("es")));
    }

    [Theory]
    [InlineData(NextLevel.Same, 2, "V-sit: after set 1 at level 1 \"same\" is written; set 2 is at level 2.")]
    [InlineData(NextLevel.Harder, 1, "V-sit: after set 1 at level 1 \"harder\" is written; set 2 is at level 1.")]
    [InlineData(NextLevel.Easier, 2, "V-sit: after set 1 at level 1 \"easier\" is written; set 2 is at level 2.")]
    public void Flags_DecisionAndNextLevelDiffer_SaysBoth(NextLevel decision, int next, string expected)
    {
        var flag = Only(Lesson().Set("Ada", 1, level: 1, decision: decision).Set("Ada", 2, level: next));
        Assert.Equal(expected, English(flag));
        Assert.Equal(3, flag.EntryIds.Count);
    }

    [Fact]
    public void Flags_ImpossibleTimes_LeaveThemOutAndCountTheRest()
    {
        var lesson = Lesson().Set("Ada", 1, level: 1);
        lesson.Add("Ada", 1, 1, new Prediction(null, double.NaN));
        lesson.Add("Ada", 1, 1, new Trial(true, -3), trial: 1);
        lesson.Add("Ada", 1, 1, new Trial(true, 4.5), trial: 2);
        Assert.Equal("V-sit, set 1: times below 0 or that are no number, 2, are left out.", English(Only(lesson)));
        var task = LessonEvidence.Of(lesson.Record()).Pupils.Single().Tasks.Single();
        Assert.Equal((4.5, 2), (task.BestHold!.HeldS, task.Sets.Single().Success.SuccessCount));
    }

    [Fact]
    public void Flags_SheetWithoutTries_StopsNothing()
    {
        var lesson = new LessonBuilder(trialCount: 0).Pupils("Ada").Task(1, "V-sit", [], (1, 0, null)).Set("Ada", 1, level: 1, predicted: 0);
        Assert.Null(LessonEvidence.Of(lesson.Record()).Class.Predictions.Counts);
        lesson.Set("Ada", 2, level: 1, predicted: 1, tries: "1 2.0s");
        Assert.Equal(2, LessonEvidence.Of(lesson.Record()).Class.TrialCount);
    }

    [Fact]
    public void Flags_AbsentWithEntries_SaysSo() =>
        Assert.Equal("Marked absent, and has entries.", English(Only(Lesson().Set("Ada", 1, level: 1).Absent("Ada"))));
}
