using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Records.Evidence.Levels;

/// <summary>What is believed of a chance of success, as a page shows it. To the teacher only; it is no mark, and nobody is put in its order.</summary>
/// <param name="ChanceFraction">The expected share of tries that succeed, inside its range.</param>
/// <param name="LowFraction">Where the share in the long run likely begins.</param>
/// <param name="HighFraction">Where it likely ends.</param>
/// <param name="IsMostlyAssumed">Whether more of it was assumed beforehand than seen, nobody has tried the level, or no tries link it with the pupil.</param>
/// <param name="TrialCount">The tries at the level itself behind it: of one pupil, or of the class; 0 where it rests on others only.</param>
public sealed record LevelChance(double ChanceFraction, double LowFraction, double HighFraction, bool IsMostlyAssumed, int TrialCount)
{
    /// <summary>
    /// A range wider than this says too little: wherever it lies it holds one half, so that it does not even tell whether more tries succeed than fail.
    /// About five tries well chosen bring a range down to it.
    /// </summary>
    public const double WidestFraction = .5;

    // A pupil's own tries elsewhere narrow the range at a level nobody has tried; how hard that level is stays assumed all the same.
    private const ResponseCaution Assumed = ResponseCaution.MostlyAssumption | ResponseCaution.NoTrials | ResponseCaution.Disconnected;

    /// <summary>Whether there are not enough tries yet to say anything.</summary>
    public bool IsTooWide => HighFraction - LowFraction > WidestFraction;

    /// <summary>What a chance of the model comes to.</summary>
    /// <param name="chance">The chance; none where the model has none.</param>
    public static LevelChance? Of(SuccessChance? chance)
    {
        if (chance is null) return null;
        var (low, high) = chance.Range(SuccessShare.RangeConfidenceFraction);
        return new(Math.Clamp(chance.ChanceFraction, low, high), low, high, (chance.Logit.Cautions & Assumed) != 0, chance.TrialCount);
    }
}
