using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>An average over possible means and spreads of a class, each weighted by how well it explains all pupils.</summary>
/// <param name="likelihoods">One for each pupil, over the grid.</param>
/// <param name="isForPupils">Whether pupils are averaged, too, and not only the class.</param>
internal sealed class BiasAverage(IReadOnlyList<double[]> likelihoods, bool isForPupils)
{
    private readonly double[][] weights = isForPupils ? likelihoods.Select(_ => new double[BiasGrid.Count]).ToArray() : [];
    private readonly double[] normals = new double[BiasGrid.Count + 3], evidence = new double[likelihoods.Count];
    private double top = double.NegativeInfinity;
    private double total, mean, meanSquare, spread, spreadSquare, logSpread, logSpreadSquare;

    public double Mean => mean / total;

    public double MeanSd => Math.Sqrt(Math.Max(0, meanSquare / total - Mean * Mean));

    public double Spread => spread / total;

    public double LogSpread => logSpread / total;

    public double LogSpreadSd => Math.Sqrt(Math.Max(0, logSpreadSquare / total - LogSpread * LogSpread));

    /// <summary>The variance of the bias of a pupil of whom nothing is known.</summary>
    public double Unknown => spreadSquare / total + MeanSd * MeanSd;

    /// <summary>One mean and spread with the log of its weight before anything was seen.</summary>
    public void Add(double classMean, double classSpread, double logPrior)
    {
        var (first, count) = BiasGrid.Normal(classMean, classSpread, normals);
        var normal = normals.AsSpan(0, count);
        var log = logPrior;
        for (var p = 0; p < likelihoods.Count; p++) log += Math.Log(evidence[p] = Dot(normal, likelihoods[p].AsSpan(first, count)));
        if (log > top)
        {
            // Everything so far is scaled down to the new best, so that nothing overflows however many pupils there are.
            Scale(Math.Exp(top - log));
            top = log;
        }
        var weight = Math.Exp(log - top);
        if (weight < 1e-12) return;
        total += weight;
        mean += weight * classMean;
        meanSquare += weight * classMean * classMean;
        spread += weight * classSpread;
        spreadSquare += weight * classSpread * classSpread;
        logSpread += weight * Math.Log(classSpread);
        logSpreadSquare += weight * Math.Log(classSpread) * Math.Log(classSpread);
        for (var p = 0; p < weights.Length; p++)
        {
            AddProduct(weights[p].AsSpan(first, count), weight / evidence[p], normal, likelihoods[p].AsSpan(first, count));
        }
    }

    /// <summary>The weights of one pupil's biases.</summary>
    public double[] Of(int pupil) => weights[pupil];

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var (sum, i) = (Vector256<double>.Zero, 0);
        ref var one = ref MemoryMarshal.GetReference(a);
        ref var other = ref MemoryMarshal.GetReference(b);
        for (; i <= a.Length - 4; i += 4) sum += Vector256.LoadUnsafe(ref one, (nuint)i) * Vector256.LoadUnsafe(ref other, (nuint)i);
        var rest = Vector256.Sum(sum);
        for (; i < a.Length; i++) rest += a[i] * b[i];
        return rest;
    }

    private static void AddProduct(Span<double> to, double factor, ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var i = 0;
        ref var sum = ref MemoryMarshal.GetReference(to);
        ref var one = ref MemoryMarshal.GetReference(a);
        ref var other = ref MemoryMarshal.GetReference(b);
        for (; i <= to.Length - 4; i += 4)
            (Vector256.LoadUnsafe(ref sum, (nuint)i) + factor * Vector256.LoadUnsafe(ref one, (nuint)i) * Vector256.LoadUnsafe(ref other, (nuint)i)).StoreUnsafe(ref sum, (nuint)i);
        for (; i < to.Length; i++) to[i] += factor * a[i] * b[i];
    }

    private void Scale(double factor)
    {
        (total, mean, meanSquare) = (total * factor, mean * factor, meanSquare * factor);
        (spread, spreadSquare) = (spread * factor, spreadSquare * factor);
        (logSpread, logSpreadSquare) = (logSpread * factor, logSpreadSquare * factor);
        foreach (var row in weights)
            for (var i = 0; i < row.Length; i++)
                row[i] *= factor;
    }
}
