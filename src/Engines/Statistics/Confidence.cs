using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics;

/// <summary>The one door that checks how often a range is to hold the truth, and what that means for a normal error.</summary>
internal static class Confidence
{
    /// <summary>Lets a confidence through, or says what is wrong with it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public static void Check(double confidenceFraction)
    {
        if (!(confidenceFraction > 0 && confidenceFraction < 1))
            throw new ArgumentOutOfRangeException(nameof(confidenceFraction), confidenceFraction, "A confidence lies between 0 and 1, both left out.");
    }

    /// <summary>How many standard errors a range reaches to each side: 1.645 for 0.90, 1.960 for 0.95.</summary>
    public static double HalfWidthSd(double confidenceFraction) => Normal.InvCDF(0, 1, (1 + confidenceFraction) / 2);
}
