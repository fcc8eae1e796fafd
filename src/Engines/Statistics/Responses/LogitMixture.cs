using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses.Numerics;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What is known of a logit: a mixture of normal distributions, one for each pair of spreads.</summary>
internal sealed class LogitMixture(IReadOnlyList<(double Weight, double Mean, double Variance)> parts)
{
    // Fifteen points: a logistic over a wide normal is not a polynomial, and this is asked once a number, not once a round.
    private static readonly GaussHermite Rule = GaussHermite.Of(15);

    public double Mean => parts.Sum(p => p.Weight * p.Mean);

    public double Variance
    {
        get
        {
            var mean = Mean;
            return parts.Sum(p => p.Weight * (p.Variance + (p.Mean - mean) * (p.Mean - mean)));
        }
    }

    /// <summary>The expected chance.</summary>
    public double Chance => parts.Sum(p => p.Weight * Rule.Mean(p.Mean, Math.Sqrt(p.Variance), x => 1 / (1 + Math.Exp(-x))));

    public double Below(double logit) => parts.Sum(p => p.Weight * Normal.CDF(p.Mean, Math.Sqrt(p.Variance), logit));

    /// <summary>The logit that so much of the mixture lies below.</summary>
    public double Quantile(double share)
    {
        var reach = 8 * Math.Sqrt(Variance);
        double low = Mean - reach, high = Mean + reach;
        for (var halving = 0; halving < 60; halving++)
        {
            var middle = (low + high) / 2;
            if (Below(middle) < share) low = middle; else high = middle;
        }
        return (low + high) / 2;
    }
}
