using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence.Visits;

/// <summary>The talks noted in one lesson.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="PresentCount">Pupils of the class not marked absent.</param>
/// <param name="VisitedCount">Of them, pupils with a talk.</param>
/// <param name="Visits">The talks, pupil by pupil.</param>
public sealed record LessonVisits(UnitLesson Lesson, int PresentCount, int VisitedCount, IReadOnlyList<VisitEvidence> Visits)
{
    /// <summary>Talks in which the teacher spoke so.</summary>
    /// <param name="form">How the teacher spoke.</param>
    public int CountOf(VisitForm form) => Visits.Count(v => v.Form == form);
}
