namespace Slantwise.Engines.Statistics.Holds;

/// <summary>What a stopwatch adds to a tick.</summary>
public static class TimedHoldInformation
{
    /// <summary>How much a timed try, stopped at its target, says about the pupil's ability, in 1/logit²; a ticked one says share · (1 − share).</summary>
    /// <param name="heldFraction">The chance to hold until the target, 0 to 1.</param>
    /// <returns>(1 − share³) / 3: never less than the tick's, about double it where the target is mostly missed, nearly equal where it is mostly met.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1.</exception>
    /// <remarks>By integrating (1 − 2F)² over the falls of a log-logistic hold and adding F² for those who reach the target, F = 1 − share.</remarks>
    public static double Of(double heldFraction) => heldFraction is >= 0 and <= 1
        ? (1 - heldFraction * heldFraction * heldFraction) / 3
        : throw new ArgumentOutOfRangeException(nameof(heldFraction), heldFraction, "A chance lies from 0 to 1.");
}
