using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics.Orders;

/// <summary>Two levels next to each other in the order, and the pupils who tried both: each compared with themselves, whoever chose to try.</summary>
/// <param name="Easier">Number of the level said to be easier, from 0.</param>
/// <param name="Harder">The next one.</param>
/// <param name="ComparedCount">Pupils who tried both.</param>
/// <param name="AsOrderedCount">Those who passed only the easier.</param>
/// <param name="AgainstCount">Those who passed only the harder.</param>
public readonly record struct LevelPair(int Easier, int Harder, int ComparedCount, int AsOrderedCount, int AgainstCount)
{
    /// <summary>How often two equally hard levels would differ as one-sidedly or more; 1 where no pupil tells them apart.</summary>
    public double ChanceFraction => AsOrderedCount + AgainstCount == 0 ? 1
        : Math.Min(1, 2 * Binomial.CDF(.5, AsOrderedCount + AgainstCount, Math.Min(AsOrderedCount, AgainstCount)));
}
