namespace Slantwise.Surface.Tests.Marks;

/// <summary>Random numbers from a seed, the same on every machine; a sequence of its own for each purpose, so that drawing more for one changes nothing for another.</summary>
/// <remarks>Source: [Steele2014] SplitMix64 for the bits; [BoxMuller1958] for normal deviates.</remarks>
internal sealed class Luck(ulong seed, ulong purpose)
{
    private ulong _state = Mixed(seed ^ Mixed(purpose));

    public ulong Bits() => Mixed(_state += 0x9E3779B97F4A7C15);

    public double Fraction() => (Bits() >> 11) * (1.0 / (1UL << 53));

    public double Between(double low, double high) => low + (high - low) * Fraction();

    public bool Happens(double chanceFraction) => Fraction() < chanceFraction;

    public int Index(int count) => (int)(Fraction() * count);

    public T Pick<T>(IReadOnlyList<T> items) => items[Index(items.Count)];

    public double Sign() => Happens(.5) ? 1 : -1;

    public double Normal(double sd) => sd * Math.Sqrt(-2 * Math.Log(1 - Fraction())) * Math.Cos(2 * Math.PI * Fraction());

    public int Weighted(ReadOnlySpan<double> weights)
    {
        var total = 0.0;
        foreach (var weight in weights) total += weight;
        var left = Fraction() * total;
        for (var i = 0; i < weights.Length - 1; i++)
        {
            left -= weights[i];
            if (left < 0) return i;
        }
        return weights.Length - 1;
    }

    public static ulong Mixed(ulong bits)
    {
        bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9;
        bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EB;
        return bits ^ (bits >> 31);
    }
}
