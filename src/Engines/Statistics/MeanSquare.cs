namespace Slantwise.Engines.Statistics;

/// <summary>A running mean and the sum of squares about it.</summary>
/// <remarks>Sources: [Welford1962]; [Chan1983] for parts (from memory).</remarks>
internal struct MeanSquare
{
    private double mean, squares;
    private int count;

    public readonly int Count => count;

    public readonly double Mean => mean;

    /// <summary>The standard error of a figure when these are the figures with one of the units left out; 0 for a single unit.</summary>
    public readonly double JackknifeError => count < 2 ? 0 : Math.Sqrt((count - 1.0) / count * squares);

    public void Add(double value)
    {
        count++;
        var from = value - mean;
        mean += from / count;
        squares += from * (value - mean);
    }

    /// <summary>Adds figures that were counted apart, in another school or on another thread.</summary>
    public void Add(MeanSquare other)
    {
        if (other.count == 0) return;
        var from = other.mean - mean;
        squares += other.squares + from * from * count * other.count / (count + (double)other.count);
        mean += from * other.count / (count + (double)other.count);
        count += other.count;
    }
}
