using Slantwise.Desk.Progress;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Desk;

public sealed class LessonProgressTests
{
    private static readonly DateOnly Today = new(2026, 3, 11);

    [Theory]
    [InlineData(false, false, 0, 0, LessonStep.ChooseSheet)]
    [InlineData(true, false, 0, 0, LessonStep.Print)]
    [InlineData(true, true, 1, 0, LessonStep.Print)]
    [InlineData(true, true, 0, 0, LessonStep.EnterResults)]
    [InlineData(true, true, -1, 19, LessonStep.EnterResults)]
    [InlineData(true, true, -1, 20, LessonStep.SeeEvidence)]
    [InlineData(true, true, 1, 20, LessonStep.SeeEvidence)]
    public void Step_OfALesson_IsWhatItWaitsFor(bool hasSheet, bool isFrozen, int daysAhead, int enteredCount, LessonStep expected)
    {
        var lesson = new Lesson
        {
            SchoolId = Guid.Empty,
            Id = Guid.Empty,
            ClassId = Guid.Empty,
            Date = Today.AddDays(daysAhead),
            SheetId = hasSheet ? Guid.Empty : null,
            SheetVersion = isFrozen ? 1 : null,
        };
        var progress = new LessonProgress(lesson, "7B", "", PupilCount: 20, enteredCount, Today);
        Assert.Equal(expected, progress.Step);
        Assert.Equal(20 - enteredCount, progress.WaitingCount);
    }

    [Fact]
    public void Step_OfAnEmptyClass_IsNotEvidence()
    {
        var lesson = new Lesson { SchoolId = Guid.Empty, Id = Guid.Empty, ClassId = Guid.Empty, Date = Today, SheetId = Guid.Empty, SheetVersion = 1 };
        Assert.Equal(LessonStep.EnterResults, new LessonProgress(lesson, "7B", "", 0, 0, Today).Step);
    }
}
