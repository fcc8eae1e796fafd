using Slantwise.Desk.Pages.Evidence;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Visits;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class VisitTextTests
{
    private static readonly UnitLesson[] Lessons = [.. Enumerable.Range(1, 3).Select(i => new UnitLesson(Guid.CreateVersion7(), i, new(2027, 3, i), ""))];

    private static PupilEvidence Pupil(string label, params int[] visited) => new()
    {
        PupilId = Guid.CreateVersion7(), Label = label,
        Visits = [.. visited.Select(l => new VisitEvidence(Lessons[l - 1].LessonId, default, VisitTopic.Decision, VisitForm.Asked, "", Guid.CreateVersion7()))],
    };

    private static ClassVisits Of(params PupilEvidence[] pupils) => ClassVisits.Of(pupils, Lessons);

    [Fact]
    public void Waiting_FourWithoutATalkInThreeLessons_AreNamedWithAQuestion()
    {
        using var english = new Spoken("en-GB");
        var visits = Of(Pupil("Ada"), Pupil("Ben", 1, 2, 3), Pupil("Cem"), Pupil("Dov"), Pupil("Eli"), Pupil("Fay", 2));
        Assert.Equal("4 pupils have had no talk in 3 lessons: Ada, Cem, Dov, Eli. What would make it easy to begin with them?", VisitText.Waiting(visits));
        Assert.Equal("2 of 6 pupils have had a talk, from 0 to 3 each. 4 talks noted in 3 lessons.", VisitText.Spread(visits));
    }

    [Fact]
    public void Waiting_NoTalkNotedAtAll_NamesNobody()
    {
        using var english = new Spoken("en-GB");
        var visits = Of(Pupil("Ada"), Pupil("Ben"));
        Assert.Null(VisitText.Waiting(visits));
        Assert.StartsWith("No talk is noted yet.", VisitText.Spread(visits));
    }

    [Fact]
    public void Talk_AboutDecisions_CountsQuestionsAndDescriptions()
    {
        using var english = new Spoken("en-GB");
        Assert.Null(VisitText.Talk(new(0, 0, [])));
        Assert.Equal("Of 12 talks about a decision, 9 were questions or descriptions.", VisitText.Talk(new(12, 9, [])));
    }

    [Fact]
    public void Sign_EachForm_IsItsOwn() => Assert.Equal(4, Enum.GetValues<VisitForm>().Select(VisitText.Sign).Distinct().Count());
}
