using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Growth;

namespace Slantwise.Records.Tests.Evidence.Growth;

public sealed class LevelMovesTests
{
    private static LessonBuilder Lesson(int number = 1) => new LessonBuilder(number).Pupils("Ada", "Ben", "Cem", "Dov", "Eli", "Fay")
        .Task(1, "Frog", ["a"], (1, 3, null), (2, 3, null), (3, 3, null)).Task(2, "Bridge", ["a"], (1, 3, null), (2, 3, null));

    [Fact]
    public void Of_ALesson_CountsEachPupilOnce()
    {
        // By hand: Ada harder; Ben easier; Cem harder in one task, easier in the other; Dov there and back; Eli one set; Fay stayed.
        var lesson = Lesson()
            .Set("Ada", 1, level: 1).Set("Ada", 2, level: 3).Set("Ada", 1, level: 2, task: 2).Set("Ada", 2, level: 2, task: 2)
            .Set("Ben", 1, level: 2).Set("Ben", 2, level: 1)
            .Set("Cem", 1, level: 1).Set("Cem", 2, level: 2).Set("Cem", 1, level: 2, task: 2).Set("Cem", 2, level: 1, task: 2)
            .Set("Dov", 1, level: 2).Set("Dov", 2, level: 3).Set("Dov", 3, level: 2)
            .Set("Eli", 1, level: 2)
            .Set("Fay", 1, level: 3).Set("Fay", 2, level: 3);
        var moves = LevelMoves.Of(LessonEvidence.Of(lesson.Record()).Pupils, lesson.LessonId);
        Assert.Equal((1, 1, 1, 2), (moves.HarderCount, moves.EasierCount, moves.BothCount, moves.StayedCount));
        Assert.Equal((5, 4), (moves.PupilCount, moves.ExploredCount));
        Assert.Equal(4 + 2 + 4 + 3 + 2, moves.EntryIds.Distinct().Count());
    }

    [Fact]
    public void Of_SeveralLessons_ComparesTheFirstSetWithTheLatest()
    {
        var unit = UnitEvidence.Of([Lesson(1).Set("Ada", 1, level: 1).Set("Ada", 2, level: 3).Record(), Lesson(2).Set("Ada", 1, level: 1).Record()]);
        Assert.Equal((0, 1), (LevelMoves.Of(unit.Pupils).HarderCount, LevelMoves.Of(unit.Pupils).StayedCount));
        Assert.Equal(1, LevelMoves.Of(unit.Pupils, unit.Lessons[0].LessonId).HarderCount);
        Assert.Equal(0, LevelMoves.Of(unit.Pupils, unit.Lessons[1].LessonId).PupilCount);
    }
}
