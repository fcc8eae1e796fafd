using Slantwise.Desk.Words;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Visits;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>How talks are spread over a class, as words. Nobody is ranked, the teacher neither.</summary>
public static class VisitText
{
    /// <summary>How many pupils had a talk, and from how few to how many.</summary>
    public static string Spread(ClassVisits visits) => visits.VisitCount == 0
        ? UnitWords.Say("VisitsNone")
        : UnitWords.Say("VisitsSpread", visits.VisitedPupilCount, visits.AttendedPupilCount, visits.FewestCount, visits.MostCount)
            + " " + UnitWords.SayCount("VisitsIn", visits.VisitCount, visits.Lessons.Count);

    /// <summary>One lesson's talks.</summary>
    public static string Spread(LessonVisits lesson) => lesson.Visits.Count == 0
        ? UnitWords.Say("VisitsNoneHere")
        : UnitWords.SayCount("VisitsHere", lesson.Visits.Count, lesson.VisitedCount, lesson.PresentCount);

    /// <summary>Who has waited, by name, with a question; none where nobody has, or where no talk was noted at all.</summary>
    public static string? Waiting(ClassVisits visits)
    {
        if (visits.VisitCount == 0 || visits.Waiting is not { Count: > 0 } waiting) return null;
        var lessons = UnitWords.SayCount("Lessons", visits.WaitingLessonCount);
        return UnitWords.SayCount("Waiting", waiting.Count, lessons, MoveText.Names(waiting.Select(p => p.Label))) + " " + UnitWords.Say("WaitingAsk");
    }

    /// <summary>How the teacher spoke about choices; none where they were not talked about.</summary>
    public static string? Talk(LevelTalk talk) => talk.RemarkCount == 0 ? null : UnitWords.SayCount("LevelTalk", talk.RemarkCount, talk.NeutralCount);

    /// <summary>The sign that stands for how the teacher spoke.</summary>
    public static string Sign(VisitForm form) => form switch
    {
        VisitForm.Asked => "?",
        VisitForm.Described => "=",
        VisitForm.Corrected => "→",
        _ => "±",
    };
}
