namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A timed hold, and how it stopped.</summary>
/// <param name="HeldS">How long it was seen to last, 0 or more.</param>
/// <param name="HasFallen">It ended then; otherwise it was still held when the watch stopped, so it lasted at least this long.</param>
/// <param name="Pupil">Whose it was, any number; none where each hold is somebody else's.</param>
public readonly record struct HoldTime(double HeldS, bool HasFallen, int? Pupil = null)
{
    /// <summary>The time of a try.</summary>
    /// <param name="attempt">One that reached its dose was stopped at the dose, however long the watch ran.</param>
    /// <param name="pupil">Whose it was.</param>
    /// <returns>None for a try that failed untimed: leaving those out flatters, so where there are some ask <see cref="Turnbull"/>.</returns>
    public static HoldTime? Of(HoldAttempt attempt, int? pupil = null) => attempt switch
    {
        { HasReachedDose: true, DoseS: { } dose } => new(dose, false, pupil),
        { HeldS: { } held } => new(held, !attempt.HasReachedDose, pupil),
        _ => null,
    };
}
