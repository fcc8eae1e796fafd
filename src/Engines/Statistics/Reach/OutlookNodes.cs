using MathNet.Numerics.Distributions;

namespace Slantwise.Engines.Statistics.Reach;

/// <summary>A pupil's levels seen from equally likely places of the pupil's own part.</summary>
internal sealed class OutlookNodes
{
    private const int NodeCount = 101;
    private static readonly double[] Places = [.. Enumerable.Range(0, NodeCount)
        .Select(k => Normal.InvCDF(0, 1, (k + .5) / NodeCount))];

    private readonly double[][] _within;
    private readonly double[][] _certain;

    public OutlookNodes(PupilOutlook pupil, ReachBand band)
    {
        _within = new double[pupil.Levels.Count][];
        _certain = new double[pupil.Levels.Count][];
        for (var j = 0; j < pupil.Levels.Count; j++)
        {
            (_within[j], _certain[j]) = (new double[NodeCount], new double[NodeCount]);
            // A level that is not offered is never within and never stretches.
            Array.Fill(_certain[j], 1);
            if (pupil.Levels[j] is { } level) Fill(level, pupil.AbilitySdLogits, band, _within[j], _certain[j]);
        }
    }

    /// <summary>The chance that a level lies in the band.</summary>
    public double Within(int level) => _within[level].Average();

    /// <summary>The chance that no level lies in the band.</summary>
    public double NoneWithin() => Product(_within, p => 1 - p);

    /// <summary>The chance that every level is certain, or none is offered.</summary>
    public double AllCertain() => Product(_certain, p => p);

    /// <summary>For each place the chance that none of the first levels lies in the band.</summary>
    public double[] NoneWithinAt(int levelCount)
    {
        var none = new double[NodeCount];
        for (var k = 0; k < NodeCount; k++)
        {
            none[k] = 1;
            for (var j = 0; j < levelCount; j++) none[k] *= 1 - _within[j][k];
        }
        return none;
    }

    /// <summary>For each place the chance that a level lies in the band.</summary>
    public ReadOnlySpan<double> WithinAt(int level) => _within[level];

    public static void Check(PupilOutlook pupil, int levelCount)
    {
        if (pupil.Levels.Count != levelCount) throw new ArgumentException($"Every pupil is seen at the same {levelCount} levels; one has {pupil.Levels.Count}.", nameof(pupil));
        if (!(pupil.AbilitySdLogits >= 0) || pupil.Levels.Any(l => l is { } o && !(double.IsFinite(o.MeanLogits) && o.SdLogits >= 0 && double.IsFinite(o.SdLogits))))
            throw new ArgumentException("Means are finite and standard deviations 0 or more.", nameof(pupil));
    }

    private static double Product(double[][] chances, Func<double, double> of)
    {
        var sum = 0.0;
        for (var k = 0; k < NodeCount; k++)
        {
            var all = 1.0;
            foreach (var level in chances) all *= of(level[k]);
            sum += all;
        }
        return sum / NodeCount;
    }

    private static void Fill(LevelOutlook level, double abilitySd, ReachBand band, double[] within, double[] certain)
    {
        var ownSd = Math.Sqrt(Math.Max(0, level.SdLogits * level.SdLogits - abilitySd * abilitySd));
        // The pupil's part cannot be more uncertain than the sum it is in: where rounding says so, it is all there is.
        var sharedSd = Math.Min(abilitySd, level.SdLogits);
        for (var k = 0; k < NodeCount; k++)
        {
            var mean = level.MeanLogits + sharedSd * Places[k];
            var belowHigh = Below(band.HighLogits - mean, ownSd);
            (within[k], certain[k]) = (belowHigh - Below(band.LowLogits - mean, ownSd), 1 - belowHigh);
        }
    }

    private static double Below(double gap, double sd) => sd > 1e-9 ? Normal.CDF(0, sd, gap) : gap > 0 ? 1 : 0;
}
