namespace Slantwise.Surface.Tests.Marks.Measures;

/// <summary>Where a share may lie, from a count: a second, plain version beside the engine's.</summary>
internal static class ShareRange
{
    private const double Z95 = 1.959964;

    /// <summary>95 in 100. Source: [Wilson1927].</summary>
    public static (double Low, double High) Wilson(int hits, int count)
    {
        if (count == 0) return (0, 1);
        var (share, z2) = ((double)hits / count, Z95 * Z95);
        var middle = (share + z2 / (2 * count)) / (1 + z2 / count);
        var half = Z95 * Math.Sqrt(share * (1 - share) / count + z2 / (4.0 * count * count)) / (1 + z2 / count);
        return (Math.Max(0, middle - half), Math.Min(1, middle + half));
    }

    /// <summary>
    /// Below which a share lies with 95 in 100, from so many hits: the rule of three for none, else the exact bound. Source: [HanleyLippman1983], [ClopperPearson1934].
    /// </summary>
    public static double Below(int hits, int count)
    {
        if (count == 0) return 1;
        if (hits == 0) return Math.Min(1, 3.0 / count);
        var (low, high) = ((double)hits / count, 1.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (ChanceOfAtMost(hits, count, middle) > .05) low = middle;
            else high = middle;
        }
        return high;
    }

    // Binomial, summed from 0 upwards on the scale of logarithms.
    private static double ChanceOfAtMost(int hits, int count, double share)
    {
        var log = count * Math.Log(1 - share);
        var sum = Math.Exp(log);
        for (var k = 1; k <= hits; k++)
        {
            log += Math.Log((count - k + 1.0) / k) + Math.Log(share / (1 - share));
            sum += Math.Exp(log);
        }
        return sum;
    }
}
