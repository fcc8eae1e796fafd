namespace Slantwise.Surface.Tests.Marks.Measures;

/// <summary>Fields that were given about the same chance of a mark, and how many of them had one.</summary>
/// <param name="FromFraction">The lowest chance of the bin.</param>
/// <param name="ToFraction">The highest.</param>
internal sealed record ReliabilityBin(double FromFraction, double ToFraction)
{
    private double _sum;

    /// <summary>Narrow near certainty, where it matters.</summary>
    public static ReliabilityBin[] Usual()
    {
        double[] edges = [0, .0001, .001, .01, .05, .1, .2, .3, .4, .5, .6, .7, .8, .9, .95, .99, .999, .9999, 1];
        return [.. edges.Zip(edges.Skip(1), (from, to) => new ReliabilityBin(from, to))];
    }

    public int Fields { get; private set; }

    public int Marked { get; private set; }

    public double MeanFraction => Fields > 0 ? _sum / Fields : 0;

    public static void Add(ReliabilityBin[] bins, double chanceFraction, bool isMarked)
    {
        var bin = bins.FirstOrDefault(b => chanceFraction < b.ToFraction) ?? bins[^1];
        bin.Fields++;
        bin._sum += chanceFraction;
        if (isMarked) bin.Marked++;
    }
}
