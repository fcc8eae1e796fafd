namespace Slantwise.Engines.Mechanics;

/// <summary>Normal deviates from a seed, the same on every machine.</summary>
/// <remarks>Source: [Steele2014] SplitMix64 for the bits; [BoxMuller1958] for the deviates.</remarks>
internal struct SeededNormal(ulong seed)
{
    private ulong _state = seed;

    public (double First, double Second) Pair()
    {
        var radius = Math.Sqrt(-2 * Math.Log(1 - Fraction()));
        var (sine, cosine) = Math.SinCos(2 * Math.PI * Fraction());
        return (radius * cosine, radius * sine);
    }

    public ulong Bits()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    private double Fraction() => (Bits() >> 11) * (1.0 / (1UL << 53));
}
