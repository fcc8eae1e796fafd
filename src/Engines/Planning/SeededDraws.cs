namespace Slantwise.Engines.Planning;

/// <summary>Draws from a seed and a purpose: drawing more for one purpose changes nothing for another.</summary>
/// <remarks>Source: [Steele2014] SplitMix64 for the bits; [BoxMuller1958] for the normal deviates.</remarks>
internal sealed class SeededDraws(ulong seed, ulong purpose)
{
    private ulong _state = Mixed(seed ^ Mixed(purpose));
    private double? _spareNormal;

    /// <summary>Above 0 and below 1: 52 bits and a half, since with 53 the largest would round up to 1.</summary>
    public double NextFraction() => ((Bits() >> 12) + 0.5) * (1.0 / (1UL << 52));

    /// <summary>An index below a count, each equally likely but for a bias below one in 2^52 for counts of a class.</summary>
    public int NextIndex(int count) => (int)(NextFraction() * count);

    public double NextNormalSd()
    {
        if (_spareNormal is { } spare)
        {
            _spareNormal = null;
            return spare;
        }
        var radius = Math.Sqrt(-2 * Math.Log(NextFraction()));
        var (sine, cosine) = Math.SinCos(2 * Math.PI * NextFraction());
        _spareNormal = radius * sine;
        return radius * cosine;
    }

    /// <summary>Log-normal with a mean of 1: half of the draws lie below exp(-spread²/2).</summary>
    public double NextFactor(double spreadSd) => spreadSd == 0 ? 1 : Math.Exp(spreadSd * NextNormalSd() - spreadSd * spreadSd / 2);

    /// <summary>Exponential with a mean of 1.</summary>
    public double NextExponential() => -Math.Log(NextFraction());

    public void Shuffle<T>(IList<T> items)
    {
        for (var i = items.Count - 1; i > 0; i--)
        {
            var j = NextIndex(i + 1);
            (items[i], items[j]) = (items[j], items[i]);
        }
    }

    private ulong Bits()
    {
        _state += 0x9E3779B97F4A7C15;
        return Mixed(_state);
    }

    private static ulong Mixed(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
