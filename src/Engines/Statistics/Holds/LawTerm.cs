namespace Slantwise.Engines.Statistics.Holds;

/// <summary>What one hold adds to a log likelihood, and how that bends, in the standardised log times of its two ends.</summary>
/// <param name="Value">The log likelihood.</param>
/// <param name="Low">First derivative in the lower end.</param>
/// <param name="High">First derivative in the upper end.</param>
/// <param name="LowLow">Second derivative in the lower end.</param>
/// <param name="LowHigh">Mixed second derivative.</param>
/// <param name="HighHigh">Second derivative in the upper end.</param>
internal readonly record struct LawTerm(double Value, double Low, double High, double LowLow, double LowHigh, double HighHigh)
{
    /// <summary>A hold that ended at z exactly: the log density.</summary>
    public static LawTerm Exact(HoldLaw law, double z)
    {
        var (value, slope, bend) = Density(law, z);
        return new(value, slope, 0, bend, 0, 0);
    }

    /// <summary>A hold that lasted beyond z.</summary>
    public static LawTerm Beyond(HoldLaw law, double z)
    {
        if (law == HoldLaw.Weibull) return new(-Math.Exp(z), -Math.Exp(z), 0, -Math.Exp(z), 0, 0);
        var p = Fallen(z);
        return new(-Softplus(z), -p, 0, -p * (1 - p), 0, 0);
    }

    /// <summary>A hold that ended by z.</summary>
    public static LawTerm Before(HoldLaw law, double z)
    {
        var value = law == HoldLaw.Weibull ? LogOfOneLessExp(Math.Exp(z)) : -Softplus(-z);
        var (density, slope, _) = Density(law, z);
        var ratio = Math.Exp(density - value);
        return new(value, 0, ratio, 0, 0, ratio * slope - ratio * ratio);
    }

    /// <summary>A hold that ended between two different ends.</summary>
    public static LawTerm Between(HoldLaw law, double low, double high)
    {
        // Written so that a narrow span loses no digits: never as the difference of two nearly equal shares.
        var value = law == HoldLaw.Weibull
            ? -Math.Exp(low) + LogOfOneLessExp(Math.Exp(low) * ExpLessOne(high - low))
            : high + LogOfOneLessExp(high - low) - Softplus(low) - Softplus(high);
        var (densityLow, slopeLow, _) = Density(law, low);
        var (densityHigh, slopeHigh, _) = Density(law, high);
        var (a, b) = (Math.Exp(densityLow - value), Math.Exp(densityHigh - value));
        return new(value, -a, b, -a * slopeLow - a * a, a * b, b * slopeHigh - b * b);
    }

    /// <summary>The share held beyond z.</summary>
    public static double Held(HoldLaw law, double z) => law == HoldLaw.Weibull ? Math.Exp(-Math.Exp(z)) : Fallen(-z);

    private static (double Value, double Slope, double Bend) Density(HoldLaw law, double z)
    {
        if (law == HoldLaw.Weibull) return (z - Math.Exp(z), 1 - Math.Exp(z), -Math.Exp(z));
        var p = Fallen(z);
        return (z - 2 * Softplus(z), 1 - 2 * p, -2 * p * (1 - p));
    }

    private static double Fallen(double z) => z >= 0 ? 1 / (1 + Math.Exp(-z)) : Math.Exp(z) / (1 + Math.Exp(z));

    private static double Softplus(double z) => Math.Max(z, 0) + LogOfOnePlus(Math.Exp(-Math.Abs(z)));

    // log(1 + x) for x from 0 to 1 with all its digits also where 1 + x rounds.
    private static double LogOfOnePlus(double x)
    {
        var sum = 1 + x;
        return sum == 1 ? x : Math.Log(sum) * x / (sum - 1);
    }

    // e^x − 1 without the cancellation near 0.
    private static double ExpLessOne(double x) => 2 * Math.Exp(x / 2) * Math.Sinh(x / 2);

    // log(1 − e^−x) for x above 0.
    private static double LogOfOneLessExp(double x) =>
        x < .7 ? Math.Log(-ExpLessOne(-x)) : -2 * Math.Atanh(Math.Exp(-x) / (2 - Math.Exp(-x)));
}
