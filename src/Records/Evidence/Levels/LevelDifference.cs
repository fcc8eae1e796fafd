using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>How much harder or easier a level is than another, said in tries: where the other succeeds in every other try.</summary>
/// <param name="OfEvenFraction">The share that then succeeds here.</param>
/// <param name="LowOfEvenFraction">Where it likely begins.</param>
/// <param name="HighOfEvenFraction">Where it likely ends.</param>
/// <param name="IsMostlyAssumed">Whether more of it was assumed beforehand than seen.</param>
/// <param name="IsLinked">Whether tries of the same pupils link the two, if only through others; otherwise assumptions alone compare them.</param>
public sealed record LevelDifference(double OfEvenFraction, double LowOfEvenFraction, double HighOfEvenFraction, bool IsMostlyAssumed, bool IsLinked)
{
    /// <summary>The side, where the range leaves out one half.</summary>
    public LevelSide Side => HighOfEvenFraction < .5 ? LevelSide.Harder : LowOfEvenFraction > .5 ? LevelSide.Easier : LevelSide.Unclear;

    /// <summary>What a contrast of the model comes to.</summary>
    /// <param name="harder">How much harder the level is; none where the model cannot say.</param>
    public static LevelDifference? Of(Estimate? harder)
    {
        if (harder is not { } by) return null;
        var reach = EvenChance.RangeDeviations * by.SdLogits;
        return new(
            EvenChance.Of(-by.MeanLogits), EvenChance.Of(-(by.MeanLogits + reach)), EvenChance.Of(-(by.MeanLogits - reach)),
            by.Cautions.HasFlag(ResponseCaution.MostlyAssumption), (by.Cautions & (ResponseCaution.Disconnected | ResponseCaution.NoTrials)) == 0);
    }
}
