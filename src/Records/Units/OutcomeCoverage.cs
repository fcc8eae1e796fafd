namespace Slantwise.Records.Units;

/// <summary>Where an outcome is worked on.</summary>
/// <param name="Outcome">The outcome.</param>
/// <param name="Lessons">A cell a lesson, in the order of the unit.</param>
/// <param name="TriedPupilCount">Different pupils with a try at one of its tasks, over all lessons.</param>
public sealed record OutcomeCoverage(Outcome Outcome, IReadOnlyList<CoverageCell> Lessons, int TriedPupilCount)
{
    /// <summary>In how many lessons it is planned.</summary>
    public int PlannedLessonCount => Lessons.Count(c => c.IsPlanned);
}
