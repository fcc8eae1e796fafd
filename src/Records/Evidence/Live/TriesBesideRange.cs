namespace Slantwise.Records.Evidence.Live;

/// <summary>Puts the tries of one lesson beside the range of a chance. One ability for all tasks cannot follow a pupil to whom one task is strange: where it does not, that is to be said.</summary>
public static class TriesBesideRange
{
    // Seen by chance this rarely even at the end of the range. A working rule, no source.
    private const double RareFraction = .05;

    /// <summary>Whether the tries fit.</summary>
    /// <param name="successCount">Successes, 0 to <paramref name="trialCount"/>.</param>
    /// <param name="trialCount">Tries, 0 or more.</param>
    /// <param name="lowFraction">The low end of the range, 0 to 1.</param>
    /// <param name="highFraction">Its high end.</param>
    public static TodaysTries Of(int successCount, int trialCount, double lowFraction, double highFraction) =>
        AtMost(successCount, trialCount, lowFraction) < RareFraction ? TodaysTries.Fewer
        : AtMost(trialCount - successCount, trialCount, 1 - highFraction) < RareFraction ? TodaysTries.More
        : TodaysTries.AsExpected;

    // The chance of so many successes or fewer, summed from the binomial law; a lesson's tries are few.
    private static double AtMost(int count, int trials, double chance)
    {
        if (count >= trials) return 1;
        var (term, sum) = (Math.Pow(1 - chance, trials), 0.0);
        for (var k = 0; k <= count; k++)
        {
            sum += term;
            term *= (double)(trials - k) / (k + 1) * chance / (1 - chance);
        }
        return sum;
    }
}
