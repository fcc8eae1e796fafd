namespace Slantwise.Engines.Statistics;

/// <summary>The one door that checks a count of successes.</summary>
internal static class Counts
{
    /// <summary>Lets a count of successes through, or says what is wrong with it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A negative count, or more successes than trials.</exception>
    public static void Check(int successCount, int trialCount)
    {
        if (trialCount < 0)
            throw new ArgumentOutOfRangeException(nameof(trialCount), trialCount, "A number of trials is 0 or more.");
        if (successCount < 0 || successCount > trialCount)
            throw new ArgumentOutOfRangeException(nameof(successCount), successCount, $"Successes lie from 0 to the number of trials, here {trialCount}.");
    }
}
