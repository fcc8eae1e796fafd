namespace Slantwise.Records.Evidence.Visits;

/// <summary>How the teacher's talks are spread over the class, as far as they were noted. For the teacher's own eyes; pupils stand in the order of names.</summary>
/// <param name="Pupils">Every pupil, by label.</param>
/// <param name="Lessons">The lessons held so far, those without a talk too, earliest first.</param>
public sealed record ClassVisits(IReadOnlyList<VisitedPupil> Pupils, IReadOnlyList<LessonVisits> Lessons)
{
    /// <summary>After so many lessons without a talk a pupil is named. As many as a unit leaves time to mend; common practice, no source.</summary>
    public const int MostWaitingLessons = 3;

    /// <summary>All talks noted.</summary>
    public int VisitCount => Pupils.Sum(p => p.Visits.Count);

    /// <summary>The lessons after which a pupil without a talk is named: all held so far, at most <see cref="MostWaitingLessons"/>.</summary>
    public int WaitingLessonCount => Math.Min(MostWaitingLessons, Lessons.Count);

    /// <summary>Pupils without a talk in so many lessons they were in, by label; empty where no lesson was held.</summary>
    public IReadOnlyList<VisitedPupil> Waiting => [.. Pupils.Where(p => p.AttendedCount > 0 && WaitingLessonCount > 0 && p.WaitedCount >= WaitingLessonCount)];

    /// <summary>The fewest talks with a pupil who was in a lesson; 0 for nobody.</summary>
    public int FewestCount => Attended.Select(p => p.Visits.Count).DefaultIfEmpty().Min();

    /// <summary>The most talks with one pupil.</summary>
    public int MostCount => Attended.Select(p => p.Visits.Count).DefaultIfEmpty().Max();

    /// <summary>Pupils who were in a lesson.</summary>
    public int AttendedPupilCount => Attended.Count();

    /// <summary>Of them, pupils with a talk.</summary>
    public int VisitedPupilCount => Attended.Count(p => p.Visits.Count > 0);

    private IEnumerable<VisitedPupil> Attended => Pupils.Where(p => p.AttendedCount > 0);

    /// <summary>The talks of a class.</summary>
    /// <param name="pupils">Its pupils, by label.</param>
    /// <param name="lessons">Its lessons, earliest first. One of which nothing is written, no talk and no absence, was not held yet.</param>
    public static ClassVisits Of(IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<UnitLesson> lessons)
    {
        var written = pupils.SelectMany(p => p.Tasks.SelectMany(t => t.Sets).Select(s => s.LessonId)
            .Concat(p.Visits.Select(v => v.LessonId)).Concat(p.AbsentLessonIds)).ToHashSet();
        var held = lessons.Where(l => written.Contains(l.LessonId)).ToList();
        return new(
            [.. pupils.Select(p =>
            {
                var attended = held.Where(l => !p.AbsentLessonIds.Contains(l.LessonId)).ToList();
                var waited = attended.AsEnumerable().Reverse().TakeWhile(l => p.Visits.All(v => v.LessonId != l.LessonId)).Count();
                return new VisitedPupil(p.PupilId, p.Label, p.Visits, attended.Count, waited);
            })],
            [.. held.Select(l =>
            {
                var present = pupils.Where(p => !p.AbsentLessonIds.Contains(l.LessonId)).ToList();
                return new LessonVisits(
                    l, present.Count, present.Count(p => p.Visits.Any(v => v.LessonId == l.LessonId)),
                    [.. pupils.SelectMany(p => p.Visits).Where(v => v.LessonId == l.LessonId)]);
            })]);
    }
}
