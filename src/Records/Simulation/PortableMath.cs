namespace Slantwise.Records.Simulation;

/// <summary>Exponential and logarithm from additions, multiplications and divisions only, which every platform rounds alike.</summary>
/// <remarks>The base library calls the platform's own, whose last bits differ; one such bit could change a simulated class.</remarks>
internal static class PortableMath
{
    // ln 2 in two parts: the first has enough trailing zero bits for k·Ln2High to be exact for every exponent k of a double.
    // Source: [Fdlibm1993] e_exp.c (from memory).
    private const double Ln2High = 6.93147180369123816490e-01;
    private const double Ln2Low = 1.90821492927058770002e-10;

    /// <summary>e to the power of x, within 4e-16 of it relatively for |x| ≤ 700.</summary>
    public static double Exp(double x)
    {
        var k = Math.Round(x / (Ln2High + Ln2Low));
        var rest = x - (k * Ln2High) - (k * Ln2Low);
        // |rest| ≤ 0.35, and 0.35^15 / 15! is below 1e-19: the series may end at 14.
        var sum = 1.0;
        for (var n = 14; n >= 1; n--) sum = 1 + (rest * sum / n);
        return Math.ScaleB(sum, (int)k);
    }

    /// <summary>The natural logarithm of a number above 0.</summary>
    public static double Log(double x)
    {
        var k = Math.ILogB(x);
        var mantissa = Math.ScaleB(x, -k);
        if (mantissa > 1.4142135623730951)
        {
            mantissa /= 2;
            k++;
        }
        // ln m = 2 artanh s with |s| ≤ 0.1716; 0.1716^25 / 25 is below 1e-20.
        var s = (mantissa - 1) / (mantissa + 1);
        var square = s * s;
        var sum = 0.0;
        for (var n = 23; n >= 3; n -= 2) sum = square * (sum + (1.0 / n));
        return (k * Ln2High) + ((2 * s * (1 + sum)) + (k * Ln2Low));
    }

    /// <summary>The chance that belongs to log odds.</summary>
    public static double Logistic(double logits) => logits >= 0 ? 1 / (1 + Exp(-logits)) : Exp(logits) / (1 + Exp(logits));

    /// <summary>The log odds of a chance between 0 and 1, both excluded.</summary>
    public static double Logit(double fraction) => Log(fraction) - Log(1 - fraction);
}
