using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Visits;

namespace Slantwise.Records.Tests.Evidence.Visits;

public sealed class ClassVisitsTests
{
    private static LessonBuilder Lesson(int number, params string[] visited)
    {
        var lesson = new LessonBuilder(number).Pupils("Dov", "Ben", "Ada", "Cem").Task(1, "Frog", [], (1, 3, null)).Set("Ada", 1, level: 1, tries: "1");
        foreach (var pupil in visited) lesson.Add(pupil, null, null, new Visit(VisitTopic.Cue, VisitForm.Asked));
        return lesson;
    }

    private static ClassVisits Of(params LessonBuilder[] lessons)
    {
        var unit = UnitEvidence.Of([.. lessons.Select(l => l.Record())]);
        return ClassVisits.Of(unit.Pupils, unit.Lessons);
    }

    [Fact]
    public void Waiting_ThreeLessonsWithoutATalk_ArePupilsByLabel()
    {
        // Ada was talked with in lesson 1 of 4; Ben in lesson 2; Cem never, and was absent once; Dov never.
        var visits = Of(Lesson(1, "Ada"), Lesson(2, "Ben").Absent("Cem"), Lesson(3), Lesson(4));
        Assert.Equal(3, visits.WaitingLessonCount);
        Assert.Equal(["Ada", "Cem", "Dov"], visits.Waiting.Select(p => p.Label));
        Assert.Equal([3, 2, 3, 4], visits.Pupils.Select(p => p.WaitedCount));
        Assert.Equal((2, 0, 1, 2, 4), (visits.VisitCount, visits.FewestCount, visits.MostCount, visits.VisitedPupilCount, visits.AttendedPupilCount));
    }

    [Fact]
    public void Waiting_AbsentInALesson_TheLessonsBeforeAreLookedAt() =>
        // Two lessons were held; Ben was in one of them only, which is too few to wait for two.
        Assert.Equal(["Ada", "Cem", "Dov"], Of(Lesson(1).Absent("Ben"), Lesson(2)).Waiting.Select(p => p.Label));

    [Fact]
    public void Of_LessonsWithoutAnyEntry_AreNotHeldYet()
    {
        var planned = new LessonBuilder(2).Pupils("Dov", "Ben", "Ada", "Cem").Task(1, "Frog", [], (1, 3, null));
        Assert.Single(Of(Lesson(1, "Ada"), planned).Lessons);
        Assert.Empty(Of(planned).Waiting);
        Assert.Equal(0, Of(planned).MostCount);
    }

    [Fact]
    public void Of_TalksOfALesson_AreCountedByFormAndPupil()
    {
        var lesson = Lesson(1, "Ada", "Ada", "Ben").Absent("Dov");
        lesson.Add("Cem", null, null, new Visit(VisitTopic.Decision, VisitForm.Valued));
        var held = Assert.Single(Of(lesson).Lessons);
        Assert.Equal((3, 3, 4), (held.PresentCount, held.VisitedCount, held.Visits.Count));
        Assert.Equal((3, 0, 0, 1), (held.CountOf(VisitForm.Asked), held.CountOf(VisitForm.Described), held.CountOf(VisitForm.Corrected), held.CountOf(VisitForm.Valued)));
    }
}
