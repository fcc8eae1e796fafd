namespace Slantwise.Records.Schools;

/// <summary>A return after a pause, as a school sets it: what stays ruled out, each until its day has come and somebody lifts it. Why there was a pause is neither asked nor kept.</summary>
public static class ReturnGates
{
    /// <summary>The gates of one pupil's return.</summary>
    /// <param name="steps">The school's steps; may be empty.</param>
    /// <param name="pupil">The pupil.</param>
    /// <param name="firstDay">The day the counting begins.</param>
    /// <param name="standing">The pupil's restrictions. A gate that stands already for the same demand is moved, never to an earlier day, and not doubled.</param>
    /// <param name="newId">Makes the ids of new gates.</param>
    /// <returns>One a step, to be saved; the earliest day for lifting is <paramref name="firstDay"/> and the step's days after it.</returns>
    public static IReadOnlyList<Restriction> Of(
        IReadOnlyList<ReturnStep> steps, Pupil pupil, DateOnly firstDay, IReadOnlyList<Restriction> standing, Func<Guid> newId) => [.. steps.Select(step =>
    {
        var day = firstDay.AddDays(step.DayCount);
        var before = standing.FirstOrDefault(r => r.PupilId == pupil.Id && r is { IsLiftedByHand: true, Until: not null } && r.Without == step.Without);
        return before is null
            ? new Restriction { SchoolId = pupil.SchoolId, Id = newId(), PupilId = pupil.Id, Without = step.Without, Since = firstDay, Until = day, IsLiftedByHand = true }
            : before with { Since = before.Since < firstDay || before.Since is null ? before.Since : firstDay, Until = before.Until > day ? before.Until : day };
    })];
}
