namespace Slantwise.Records.Simulation;

/// <summary>Draws from the distributions that a simulated class is made of.</summary>
internal sealed class Draws
{
    private readonly Pcg32 _bits;
    private double? _spareNormal;

    private Draws(Pcg32 bits) => _bits = bits;

    /// <summary>A sequence of its own for each purpose, so that drawing more for one changes nothing for another.</summary>
    public static Draws For(ulong seed, ulong purpose) => new(new Pcg32(Mix(seed ^ Mix(purpose)), purpose));

    /// <summary>A number between 0 and 1, both excluded.</summary>
    // 52 bits and a half: with 53 the largest would round up to 1.
    public double NextFraction() => (NextBits(52) + 0.5) * (1.0 / (1UL << 52));

    /// <summary>Some random bits, at most 64.</summary>
    public ulong NextBits(int count) => (((ulong)_bits.Next() << 32) | _bits.Next()) >> (64 - count);

    /// <summary>Whether something with this chance happens.</summary>
    public bool Happens(double chanceFraction) => NextFraction() < chanceFraction;

    /// <summary>An index below a count.</summary>
    public int NextIndex(int count) => (int)_bits.NextBelow((uint)count);

    /// <summary>From the normal distribution.</summary>
    /// <remarks>Source: [MarsagliaBray1964], the polar method.</remarks>
    public double NextNormal(double mean, double sd)
    {
        if (_spareNormal is { } spare)
        {
            _spareNormal = null;
            return mean + (sd * spare);
        }
        double x, y, square;
        do
        {
            x = (2 * NextFraction()) - 1;
            y = (2 * NextFraction()) - 1;
            square = (x * x) + (y * y);
        }
        while (square is >= 1 or 0);
        var factor = Math.Sqrt(-2 * PortableMath.Log(square) / square);
        _spareNormal = y * factor;
        return mean + (sd * x * factor);
    }

    /// <summary>From the standard logistic distribution: what turns log odds into an outcome.</summary>
    public double NextLogistic() => PortableMath.Logit(NextFraction());

    /// <summary>An index, each as likely as its weight; the weights are not negative and not all 0.</summary>
    public int NextWeighted(IReadOnlyList<double> weights)
    {
        var left = NextFraction() * weights.Sum();
        for (var i = 0; i < weights.Count - 1; i++)
        {
            left -= weights[i];
            if (left < 0) return i;
        }
        return weights.Count - 1;
    }

    /// <summary>The items in a random order.</summary>
    public List<T> Shuffled<T>(IEnumerable<T> items)
    {
        var list = items.ToList();
        for (var i = list.Count - 1; i > 0; i--)
        {
            var j = NextIndex(i + 1);
            (list[i], list[j]) = (list[j], list[i]);
        }
        return list;
    }

    /// <summary>Spreads neighbouring seeds over all 64 bits.</summary>
    /// <remarks>Source: [Steele2014] figure 17 (place from memory), SplitMix64.</remarks>
    internal static ulong Mix(ulong seed)
    {
        unchecked
        {
            var z = seed + 0x9e3779b97f4a7c15;
            z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
            z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
            return z ^ (z >> 31);
        }
    }
}
