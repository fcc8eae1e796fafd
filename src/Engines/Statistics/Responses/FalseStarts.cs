namespace Slantwise.Engines.Statistics.Responses;

/// <summary>How often timed failures at a level fell in the first moment, before the position was reached: a matter of its own, apart from holding.</summary>
/// <param name="FalseStartCount">Timed failures in the first moment.</param>
/// <param name="TimedFailureCount">All timed failures.</param>
public readonly record struct FalseStarts(int FalseStartCount, int TimedFailureCount)
{
    /// <summary>Chances for the share of false starts among failures to be low, middling or high, having held every share for equally likely before.</summary>
    /// <param name="lowFraction">Where middling begins, 0 to 1.</param>
    /// <param name="highFraction">Where it ends, from its beginning to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A band outside 0 to 1 or ending before it begins.</exception>
    public BetaPosterior Share(double lowFraction, double highFraction) => BetaPosterior.Of(FalseStartCount, TimedFailureCount, lowFraction, highFraction);

    internal static FalseStarts[] Of(ResponseData data, ResponseOptions options)
    {
        var found = new FalseStarts[data.Levels.Count];
        foreach (var trial in data.Cells.AllTimed)
        {
            if (trial is not { HeldS: { } held, Successes: 0 }) continue;
            found[trial.Level] = new(found[trial.Level].FalseStartCount + (held < options.FirstMomentS ? 1 : 0), found[trial.Level].TimedFailureCount + 1);
        }
        return found;
    }
}
