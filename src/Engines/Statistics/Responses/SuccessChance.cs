namespace Slantwise.Engines.Statistics.Responses;

/// <summary>The chance that a pupil succeeds at a level in a lesson, and how well it is known.</summary>
public sealed class SuccessChance
{
    private readonly LogitMixture _mixture;

    internal SuccessChance(LogitMixture mixture, Estimate logit, int trials) => (_mixture, Logit, TrialCount) = (mixture, logit, trials);

    /// <summary>The logit of the chance, with data share and cautions.</summary>
    public Estimate Logit { get; }

    /// <summary>The expected chance, 0 to 1: averaged over all that is not known, so it lies nearer to one half than the logit's mean.</summary>
    public double ChanceFraction => _mixture.Chance;

    /// <summary>How many trials of this pupil at this level stand behind it; 0 where it rests on others only.</summary>
    public int TrialCount { get; }

    /// <summary>The chance that the chance lies in a band.</summary>
    /// <param name="lowFraction">Where the band begins, 0 to 1.</param>
    /// <param name="highFraction">Where it ends, from its beginning to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A band outside 0 to 1 or ending before it begins.</exception>
    public double WithinFraction(double lowFraction, double highFraction)
    {
        if (!(lowFraction >= 0 && highFraction <= 1 && lowFraction <= highFraction))
            throw new ArgumentOutOfRangeException(nameof(lowFraction), (lowFraction, highFraction), "A band lies between 0 and 1 and ends after it begins.");
        return Math.Max(0, Below(highFraction) - Below(lowFraction));
    }

    /// <summary>The range that holds the chance so often, as much beyond it on one side as on the other.</summary>
    /// <param name="confidenceFraction">Between 0 and 1: 0.90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public (double LowFraction, double HighFraction) Range(double confidenceFraction)
    {
        Confidence.Check(confidenceFraction);
        return (Logistic(_mixture.Quantile((1 - confidenceFraction) / 2)), Logistic(_mixture.Quantile((1 + confidenceFraction) / 2)));
    }

    private static double Logistic(double x) => 1 / (1 + Math.Exp(-x));

    private double Below(double chance) => chance switch
    {
        <= 0 => 0,
        >= 1 => 1,
        _ => _mixture.Below(Math.Log(chance / (1 - chance))),
    };
}
