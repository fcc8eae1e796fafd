using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence;

public sealed class UnitEvidenceTests
{
    // The second sheet drops level 1, adds level 4 between 2 and 3, and asks for the cues in another order.
    private static LessonBuilder First() => new LessonBuilder(1).Pupils("Ada", "Ben")
        .Task(1, "V-sit", ["chest up", "toes long"], (1, 3, null), (2, 5, null), (3, 8, null))
        .Set("Ada", 1, level: 1, predicted: 5, tries: "1 1 1 0 0", cues: "1", decision: NextLevel.Same)
        .Set("Ada", 2, level: 2, predicted: 4, tries: "1 1 1 0 0", cues: "1", decision: NextLevel.Same)
        .Absent("Ben");

    private static LessonBuilder Second() => new LessonBuilder(2).Pupils("Ada", "Ben")
        .Task(1, "V-sit", ["toes long", "chest up"], (2, 5, null), (4, 6, null), (3, 8, null))
        .Set("Ada", 1, level: 2, predicted: 3, tries: "1 1 1 1 0", cues: "1 2", decision: NextLevel.Harder)
        .Set("Ada", 2, level: 4, predicted: 1, tries: "7.0s 0 0 0 0", cues: "2")
        .Set("Ben", 1, level: 3, tries: "1 0");

    private static UnitEvidence Unit() => UnitEvidence.Of([First().Record(), Second().Record()]);

    [Fact]
    public void Of_TwoSheets_MergesLevelsIntoOneList()
    {
        var levels = Unit().Tasks.Single().Levels;
        Assert.Equal([LevelId(1, 1), LevelId(1, 2), LevelId(1, 4), LevelId(1, 3)], levels.Select(l => l.LevelId!.Value));
        Assert.Equal([(3, 5), (7, 10), (1, 5), (1, 2)], levels.Select(l => (l.Success.SuccessCount, l.Success.TrialCount)));
        Assert.Equal([1, 0, 0, 1], levels.Select(l => l.StartPupilCount));
        Assert.Equal([0, 0, 1, 1], levels.Select(l => l.LatestPupilCount));
    }

    [Fact]
    public void Of_TwoSheets_NumbersSetsByTheMergedListAndKeepsThePrintedNumber()
    {
        var sets = Unit().Pupils.Single(p => p.Label == "Ada").Tasks.Single().Sets;
        Assert.Equal([(1, 1), (1, 2), (2, 1), (2, 2)], sets.Select(s => (s.LessonNumber, s.SetNumber)));
        Assert.Equal([1, 2, 2, 3], sets.Select(s => s.LevelNumber!.Value));
        Assert.Equal([1, 2, 1, 2], sets.Select(s => s.SheetLevelNumber!.Value));
    }

    [Fact]
    public void Of_TwoSheets_PoolsCuesByTheirWords()
    {
        // Chest up: ticked in all four; toes long: open in both sets of lesson 1 and in the last of lesson 2.
        var cues = Unit().Tasks.Single().Cues.ToDictionary(c => c.Text, c => (c.UntickedSetCount, c.CheckedSetCount));
        Assert.Equal((0, 4), cues["chest up"]);
        Assert.Equal((3, 4), cues["toes long"]);
    }

    [Fact]
    public void Of_TwoLessons_ShowsTheBiasLessonByLesson()
    {
        // By hand: lesson 1 errors 2 and 1, lesson 2 errors -1 and 0.
        var ada = Unit().Pupils.Single(p => p.Label == "Ada").Tasks.Single();
        Assert.Equal([1.5, -0.5], ada.PredictionsByLesson.Select(p => p.Predictions.Counts!.Value.MeanErrorCount));
        Assert.Equal(0.5, ada.Predictions.Counts!.Value.MeanErrorCount);
        Assert.Equal(2, Unit().Class.PredictionsByLesson.Count);
    }

    [Fact]
    public void Of_TwoLessons_PoolsAPupilsLevelsAndBest()
    {
        var ada = Unit().Pupils.Single(p => p.Label == "Ada").Tasks.Single();
        Assert.Equal([(1, 3, 5), (2, 7, 10), (3, 1, 5)], ada.Levels.Select(l => (l.LevelNumber!.Value, l.Success.SuccessCount, l.Success.TrialCount)));
        Assert.Equal((7.0, false), (ada.BestHold!.HeldS, ada.BestHold.IsLowerBound));
        Assert.Equal(3, ada.TriedLevelCount);
    }

    [Fact]
    public void Of_TwoLessons_KeepsAbsencesAndLessons()
    {
        var unit = Unit();
        Assert.Equal([First().LessonId], unit.Pupils.Single(p => p.Label == "Ben").AbsentLessonIds);
        Assert.Equal([(1, "Lesson 1"), (2, "Lesson 2")], unit.Lessons.Select(l => (l.LessonNumber, l.Title)));
        Assert.Equal(("7B", ClassId), (unit.ClassName, unit.ClassId!.Value));
    }

    [Fact]
    public void Of_LessonsInAnyOrder_AreReadByTheirDays()
    {
        var unit = UnitEvidence.Of([Second().Record(), First().Record()]);
        Assert.Equal([First().LessonId, Second().LessonId], unit.Lessons.Select(l => l.LessonId));
    }

    [Fact]
    public void Conferences_OverLessons_PoolTriesAndAskFromTheLatest()
    {
        var all = Enumerable.Range(1, 2).Select(n => new LessonBuilder(n).Pupils("Ada")
            .Task(1, "V-sit", ["chest up"], (1, 3, null), (2, 5, null))
            .Set("Ada", 1, level: 1, tries: "1 1 1 1 1").Set("Ada", 2, level: 1, tries: "1 1 1 1 1").Record()).ToList();
        Assert.Empty(LessonEvidence.Of(all[1]).Conferences);
        var talk = Assert.Single(UnitEvidence.Of(all).Conferences);
        Assert.Equal("ReasonAllMatched", talk.ReasonKey);
        Assert.Equal(24, talk.EntryIds.Count);
    }

    [Fact]
    public void Of_OneLesson_SaysWhatTheLessonSays()
    {
        var (lesson, unit) = (LessonEvidence.Of(First().Record()), UnitEvidence.Of([First().Record()]));
        Assert.Equal(lesson.Tasks.Single().Levels.Select(l => l.Success.SuccessCount), unit.Tasks.Single().Levels.Select(l => l.Success.SuccessCount));
        Assert.Equal(lesson.Conferences.Select(c => c.ReasonKey), unit.Conferences.Select(c => c.ReasonKey));
    }

    [Fact]
    public void Of_NoLesson_IsEmpty()
    {
        var unit = UnitEvidence.Of([]);
        Assert.Null(unit.ClassId);
        Assert.Empty(unit.Tasks);
        Assert.Empty(unit.Pupils);
        Assert.Equal(0, unit.Class.TrialCount);
    }

    [Fact]
    public void Of_TwoClassesOrOneLessonTwice_Throws()
    {
        var record = First().Record();
        Assert.Throws<ArgumentException>(() => UnitEvidence.Of([record, record]));
        var other = Second().Record();
        Assert.Throws<ArgumentException>(() => UnitEvidence.Of([record, other with { Class = other.Class with { Id = Id(2, 9) } }]));
    }

    [Fact]
    public void Read_PooledOverLessons_CanSayMoreThanOneSet()
    {
        // 3 of 5 says nothing yet; 12 of 15 at one level does.
        Assert.Equal(SuccessReading.NotEnoughTries, Unit().Tasks.Single().Levels[0].Success.Reading);
        var unit = UnitEvidence.Of(Enumerable.Range(1, 3).Select(n => new LessonBuilder(n).Pupils("Ada")
            .Task(1, "V-sit", [], (1, 3, null)).Set("Ada", 1, level: 1, tries: "1 1 1 1 0").Record()).ToList());
        Assert.Equal(SuccessReading.Within, unit.Tasks.Single().Levels[0].Success.Reading);
    }
}
