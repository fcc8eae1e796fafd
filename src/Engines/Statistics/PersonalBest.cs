namespace Slantwise.Engines.Statistics;

/// <summary>The longest hold of some tries, compared only with the pupil's own.</summary>
/// <param name="HeldS">How long, 0 or more.</param>
/// <param name="IsLowerBound">Not timed: the dose was reached, so it lasted at least this long.</param>
/// <param name="Index">Which try, from 0 in the order given; the first of equals.</param>
public readonly record struct PersonalBest(double HeldS, bool IsLowerBound, int Index)
{
    /// <summary>The best of some tries.</summary>
    /// <param name="attempts">Any number, any order.</param>
    /// <returns>None where no try was timed and no dose is known to have been reached. A timed hold goes before an untimed one of the same length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time that is negative or not finite; a dose that is not more than 0.</exception>
    public static PersonalBest? Of(IReadOnlyList<HoldAttempt> attempts)
    {
        PersonalBest? best = null;
        for (var i = 0; i < attempts.Count; i++)
        {
            var attempt = attempts[i];
            if (attempt.HeldS is { } held && !(held >= 0 && double.IsFinite(held)))
                throw new ArgumentOutOfRangeException(nameof(attempts), held, "A hold lasts 0 seconds or more and is a number.");
            if (attempt.DoseS is { } asked && !(asked > 0 && double.IsFinite(asked)))
                throw new ArgumentOutOfRangeException(nameof(attempts), asked, "A dose is more than 0 seconds and is a number.");

            PersonalBest? seen = attempt switch
            {
                { HeldS: { } s } => new PersonalBest(s, false, i),
                { HasReachedDose: true, DoseS: { } s } => new PersonalBest(s, true, i),
                _ => null,
            };
            if (seen is not { } now) continue;
            if (best is not { } old || now.HeldS > old.HeldS || (now.HeldS == old.HeldS && old.IsLowerBound && !now.IsLowerBound)) best = now;
        }
        return best;
    }
}
