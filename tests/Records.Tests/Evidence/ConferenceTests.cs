using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence;

public sealed class ConferenceTests
{
    private static LessonBuilder Lesson(int trialCount = 5) => new LessonBuilder(trialCount: trialCount).Pupils("Ada")
        .Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null), (2, 5, null), (3, 8, BodyDemand.HeadWeight));

    private static List<string> Keys(LessonBuilder lesson) =>
        LessonEvidence.Of(lesson.Record()).Conferences.Select(c => c.ReasonKey["Reason".Length..]).ToList();

    [Fact]
    public void Conferences_NothingStriking_AreNone() => Assert.Empty(Keys(Lesson()
        .Set("Ada", 1, level: 1, predicted: 3, tries: "1 1 0 1 0", cues: "1 2", decision: NextLevel.Same)
        .Set("Ada", 2, level: 1, predicted: 3, tries: "1 1 1 1 0", cues: "1", decision: NextLevel.Harder)));

    [Fact]
    public void Conferences_LevelNotOffered_IsAboutSafety()
    {
        var talk = Assert.Single(LessonEvidence.Of(Lesson().Set("Ada", 2, level: 3, tries: "1").Record()).Conferences);
        Assert.True(talk.IsSafety);
        Assert.Equal("V-sit, set 2: level 3 is written, which is not among the levels open to this pupil today.", talk.Reason(CultureInfo.GetCultureInfo("en")));
    }

    [Fact]
    public void Conferences_StayedWhereFewSucceeded_TellsTheCounts()
    {
        var talk = Assert.Single(LessonEvidence.Of(Lesson()
            .Set("Ada", 1, level: 1, tries: "1 0 0 0 0", decision: NextLevel.Same)
            .Set("Ada", 2, level: 1, tries: "0 1 1 0 0").Record()).Conferences);
        Assert.Equal("3 of your 10 tries matched the sheet. How did you decide about the next set?", talk.Question(CultureInfo.GetCultureInfo("en")));
        // Two choices, ten tries, one decision.
        Assert.Equal(13, talk.EntryIds.Count);
    }

    [Fact]
    public void Conferences_StayedOneSetOnly_AsksNothing() => Assert.Empty(Keys(Lesson()
        .Set("Ada", 1, level: 1, tries: "1 0 0 0 0", decision: NextLevel.Same)
        .Set("Ada", 2, level: 1, tries: "1 1 1 0 0")));

    [Fact]
    public void Conferences_HarderAfterFew_Asks() => Assert.Equal(["HarderAfterFew"], Keys(Lesson()
        .Set("Ada", 1, level: 1, tries: "1 0 0 0 0", decision: NextLevel.Harder)));

    [Fact]
    public void Conferences_EasierAfterMany_Asks() => Assert.Equal(["EasierAfterMany"], Keys(Lesson()
        .Set("Ada", 1, level: 2, tries: "1 1 1 1 0", decision: NextLevel.Easier)));

    [Fact]
    public void Conferences_TwentyTriesAllMatched_Asks()
    {
        const string ten = "1 1 1 1 1 1 1 1 1 1";
        Assert.Equal(["AllMatched"], Keys(Lesson(10).Set("Ada", 1, level: 1, tries: ten).Set("Ada", 2, level: 1, tries: ten)));
        Assert.Empty(Keys(Lesson(10).Set("Ada", 1, level: 1, tries: ten).Set("Ada", 2, level: 1, tries: ten[..^2])));
        // 18 of 20 is 9 in 10, not above.
        Assert.Empty(Keys(Lesson(10).Set("Ada", 1, level: 1, tries: ten).Set("Ada", 2, level: 1, tries: "1 1 1 1 1 1 1 1 0 0")));
    }

    [Fact]
    public void Conferences_FarPredictionsTwice_Asks()
    {
        Assert.Equal(["PredictedMore"], Keys(Lesson()
            .Set("Ada", 1, level: 1, predicted: 5, tries: "1 1 1 0 0").Set("Ada", 2, level: 2, predicted: 5, tries: "1 1 1 0 0")));
        Assert.Equal(["PredictedFewer"], Keys(Lesson()
            .Set("Ada", 1, level: 1, predicted: 1, tries: "1 1 1 0 0").Set("Ada", 2, level: 2, predicted: 2, tries: "1 1 1 1 0")));
        Assert.Empty(Keys(Lesson()
            .Set("Ada", 1, level: 1, predicted: 5, tries: "1 1 1 0 0").Set("Ada", 2, level: 2, predicted: 4, tries: "1 1 1 0 0")));
        Assert.Equal(["PredictedLonger"], Keys(Lesson()
            .Set("Ada", 1, level: 2, predictedS: 9, tries: "5.5s").Set("Ada", 2, level: 2, predictedS: 8, tries: "6.0s")));
        Assert.Equal(["PredictedShorter"], Keys(Lesson()
            .Set("Ada", 1, level: 2, predictedS: 3, tries: "5.5s").Set("Ada", 2, level: 2, predictedS: 3, tries: "6.0s")));
    }

    [Fact]
    public void Conferences_ChangedAfterOneTry_AsksWhereMoreWerePlanned()
    {
        Assert.Equal(["ChangedAfterOneTry"], Keys(Lesson().Set("Ada", 1, level: 1, tries: "0").Set("Ada", 2, level: 2, tries: "1 1 1 0 0")));
        Assert.Empty(Keys(Lesson(1).Set("Ada", 1, level: 1, tries: "0").Set("Ada", 2, level: 2, tries: "1")));
        Assert.Empty(Keys(Lesson().Set("Ada", 1, level: 1, tries: "0").Set("Ada", 2, level: 1, tries: "1 1 1 0 0")));
    }

    [Fact]
    public void Conferences_CueOpenInEveryCheckedSet_Asks()
    {
        Assert.Equal(["CueNeverTicked"], Keys(Lesson().Set("Ada", 1, level: 1, cues: "1").Set("Ada", 2, level: 1, cues: "1").Set("Ada", 3, level: 1)));
        Assert.Empty(Keys(Lesson().Set("Ada", 1, level: 1, cues: "1").Set("Ada", 2, level: 1, cues: "2")));
        Assert.Empty(Keys(Lesson().Set("Ada", 1, level: 1, cues: "1").Set("Ada", 2, level: 1)));
    }

    [Fact]
    public void Conferences_AllTickedAndTeacherDiffers_Asks()
    {
        var lesson = Lesson().Set("Ada", 1, level: 1, cues: "1 2");
        lesson.Add("Ada", 1, 1, new TeacherCheck(1, true, true));
        Assert.Empty(Keys(lesson));
        lesson.Add("Ada", 1, 1, new TeacherCheck(2, false, true));
        Assert.Equal(["ChecksDiffer"], Keys(lesson));
    }

    [Fact]
    public void Conferences_ShortHolds_AskWhereTheyEnded()
    {
        Assert.Equal(["HoldsEndLate"], Keys(Lesson().Set("Ada", 1, level: 2, tries: "4.0s 3.5s 1.0s 6.0s 6.0s")));
        Assert.Equal(["HoldsEndEarly"], Keys(Lesson().Set("Ada", 1, level: 2, tries: "0.5s 0.8s 4.0s 6.0s 6.0s")));
        Assert.Empty(Keys(Lesson().Set("Ada", 1, level: 2, tries: "4.0s 0.5s 6.0s 6.0s 6.0s")));
    }

    [Fact]
    public void Conferences_NothingWritten_AsksOnlyWhoIsThere()
    {
        var lesson = Lesson().Pupils("Ben", "Cem").Set("Ada", 1, level: 1, tries: "1 1 1 0 0").Absent("Cem");
        var talk = Assert.Single(LessonEvidence.Of(lesson.Record()).Conferences);
        Assert.Equal((PupilId("Ben"), "ReasonNoEntries"), (talk.PupilId, talk.ReasonKey));
        Assert.Empty(talk.EntryIds);
    }

    [Fact]
    public void Conferences_ManyReasons_AreTwoOfDifferentTopicsWithSafetyFirst()
    {
        var lesson = Lesson()
            .Set("Ada", 1, level: 3, predicted: 5, tries: "1 0 0 0 0", cues: "1", decision: NextLevel.Harder)
            .Set("Ada", 2, level: 3, predicted: 5, tries: "1 0 0 0 0", cues: "1", decision: NextLevel.Harder);
        Assert.Equal(["NotOffered", "CueNeverTicked"], Keys(lesson));
    }

    [Fact]
    public void Conferences_OfAClass_AreOrderedBySafetyAndHowLittleIsKnown()
    {
        var lesson = new LessonBuilder().Pupils("Ada", "Ben", "Cem", "Dia", "Eva", "Zoe")
            .Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null), (2, 5, null), (3, 8, BodyDemand.HeadWeight));
        foreach (var name in new[] { "Ada", "Ben", "Dia" }) lesson.Set(name, 1, level: 2, tries: "1 0 0 0 0", decision: NextLevel.Harder);
        lesson.Set("Ada", 2, level: 1);
        lesson.Set("Zoe", 1, level: 3).Set("Zoe", 2, level: 2).Set("Zoe", 3, level: 2);
        lesson.Set("Eva", 1, level: 1, tries: "1 1 1 1 1", decision: NextLevel.Easier);
        lesson.Add("Ben", null, null, new Visit(VisitTopic.Cue, VisitForm.Asked));

        // Zoe is about safety; Cem wrote nothing; of those with one set, Dia and Eva were not visited; Ada has two sets.
        var order = LessonEvidence.Of(lesson.Record()).Conferences.Select(c => c.Label).Distinct();
        Assert.Equal(["Zoe", "Cem", "Dia", "Eva", "Ben", "Ada"], order);
    }
}
