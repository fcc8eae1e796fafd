namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>An average over possible means and spreads of a class, each weighted by how well it explains all pupils.</summary>
internal sealed class BiasAverage(IReadOnlyList<double[]> likelihoods)
{
    private readonly double[][] weights = likelihoods.Select(_ => new double[BiasGrid.Count]).ToArray();
    private double top = double.NegativeInfinity;
    private double total, mean, meanSquare, spread, spreadSquare;

    public double Mean => mean / total;

    public double MeanSd => Math.Sqrt(Math.Max(0, meanSquare / total - Mean * Mean));

    public double Spread => spread / total;

    /// <summary>The variance of the bias of a pupil of whom nothing is known.</summary>
    public double Unknown => spreadSquare / total + MeanSd * MeanSd;

    /// <summary>One mean and spread with the log of its weight before anything was seen.</summary>
    public void Add(double classMean, double classSpread, double logPrior)
    {
        var normal = BiasGrid.Normal(classMean, classSpread);
        var evidence = new double[likelihoods.Count];
        var log = logPrior;
        for (var p = 0; p < likelihoods.Count; p++)
        {
            for (var i = 0; i < BiasGrid.Count; i++) evidence[p] += normal[i] * likelihoods[p][i];
            log += Math.Log(evidence[p]);
        }
        if (log > top)
        {
            // Everything so far is scaled down to the new best, so that nothing overflows however many pupils there are.
            Scale(Math.Exp(top - log));
            top = log;
        }
        var weight = Math.Exp(log - top);
        if (weight < 1e-14) return;
        total += weight;
        mean += weight * classMean;
        meanSquare += weight * classMean * classMean;
        spread += weight * classSpread;
        spreadSquare += weight * classSpread * classSpread;
        for (var p = 0; p < likelihoods.Count; p++)
            for (var i = 0; i < BiasGrid.Count; i++)
                weights[p][i] += weight / evidence[p] * normal[i] * likelihoods[p][i];
    }

    /// <summary>The weights of one pupil's biases.</summary>
    public double[] Of(int pupil) => weights[pupil];

    private void Scale(double factor)
    {
        (total, mean, meanSquare) = (total * factor, mean * factor, meanSquare * factor);
        (spread, spreadSquare) = (spread * factor, spreadSquare * factor);
        foreach (var row in weights)
            for (var i = 0; i < row.Length; i++)
                row[i] *= factor;
    }
}
