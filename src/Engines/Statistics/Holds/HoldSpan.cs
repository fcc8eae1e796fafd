namespace Slantwise.Engines.Statistics.Holds;

/// <summary>The lengths a hold may have had: from one second to another, "at least", "at most", or one length exactly.</summary>
/// <param name="LowS">The shortest, 0 or more.</param>
/// <param name="HighS">The longest, above 0 and not below the shortest; none where it was still held when the watch stopped.</param>
public readonly record struct HoldSpan(double LowS, double? HighS)
{
    /// <summary>Whether it is one length exactly.</summary>
    public bool IsExact => HighS == LowS;

    /// <summary>What a try says about the length of its hold.</summary>
    /// <param name="attempt">A try. One that reached its dose lasted at least the dose, however long the watch ran: when it was stopped is no fall.</param>
    /// <param name="resolutionS">To what the watch is rounded, more than 0: 1 for whole seconds. A fall at 5 then lies from 4.5 to 5.5, and not beyond the dose it missed.</param>
    /// <returns>None where nothing is known: a try that failed, untimed, against no known dose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time that is negative or not finite; a dose or resolution that is not more than 0.</exception>
    public static HoldSpan? Of(HoldAttempt attempt, double resolutionS)
    {
        if (!(resolutionS > 0 && double.IsFinite(resolutionS)))
            throw new ArgumentOutOfRangeException(nameof(resolutionS), resolutionS, "A watch is rounded to more than 0 seconds.");
        if (attempt.HeldS is { } held && !(held >= 0 && double.IsFinite(held)))
            throw new ArgumentOutOfRangeException(nameof(attempt), held, "A hold lasts 0 seconds or more and is a number.");
        if (attempt.DoseS is { } asked && !(asked > 0 && double.IsFinite(asked)))
            throw new ArgumentOutOfRangeException(nameof(attempt), asked, "A dose is more than 0 seconds and is a number.");

        return attempt switch
        {
            { HasReachedDose: true, DoseS: { } dose } => new(dose, null),
            { HasReachedDose: true, HeldS: > 0 and var s } => new(s, null),
            { HasReachedDose: true } => null,
            { HeldS: { } s, DoseS: { } dose } when dose > s - resolutionS / 2 => new(Math.Max(0, s - resolutionS / 2), Math.Min(dose, s + resolutionS / 2)),
            { HeldS: { } s } => new(Math.Max(0, s - resolutionS / 2), s + resolutionS / 2),
            { DoseS: { } dose } => new(0, dose),
            _ => null,
        };
    }
}
