namespace Slantwise.Engines.Marks;

/// <summary>How values between -.25 and 1.25 are spread, in steps of a 170th, to ask below what a share of them lies.</summary>
internal ref struct Shares(Span<int> counts)
{
    public const int StepCount = 256;
    private const float Least = -.25f;
    private const float PerStep = StepCount / 1.5f;

    private readonly Span<int> _counts = counts;
    private int _total;

    public void Add(float value)
    {
        _counts[Math.Clamp((int)((value - Least) * PerStep), 0, StepCount - 1)]++;
        _total++;
    }

    /// <summary>The value below which a share lies; not a number where there are none.</summary>
    public readonly double Below(double share)
    {
        if (_total == 0) return double.NaN;
        var (wanted, sum) = (share * _total, 0);
        for (var i = 0; i < StepCount; i++)
        {
            if (sum + _counts[i] >= wanted && _counts[i] > 0) return Least + (i + (wanted - sum) / _counts[i]) / PerStep;
            sum += _counts[i];
        }
        return 1.25;
    }
}
