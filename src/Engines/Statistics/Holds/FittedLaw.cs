namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A curve of hold times for each group, all with one spread.</summary>
/// <remarks>
/// The share held beyond t seconds is L(slope · log t − place of the group), with L(z) = 1/(1 + e^z) for the log-logistic law and
/// exp(−e^z) for Weibull's. The spread is 1/slope and the log scale place/slope, as in accelerated failure time models.
/// </remarks>
public sealed class FittedLaw
{
    private readonly double[] place;
    private readonly double slope;
    private readonly double[,] covariance;

    internal FittedLaw(HoldLaw law, double[] place, double slope, double[,] covariance, double logLikelihoodNats)
    {
        (Law, LogLikelihoodNats) = (law, logLikelihoodNats);
        (this.place, this.slope, this.covariance) = (place, slope, covariance);
    }

    /// <summary>The shape of the curves.</summary>
    public HoldLaw Law { get; }

    /// <summary>How far log times spread, above 0; one over it is the slope in logits a log second, or Weibull's shape.</summary>
    public double SpreadNats => 1 / slope;

    /// <summary>Standard error of the spread's logarithm.</summary>
    public double LogSpreadErrorNats => Math.Sqrt(covariance[place.Length, place.Length]) / slope;

    /// <summary>The log likelihood; densities in log seconds per second where lengths are exact, so comparable only over the same holds.</summary>
    public double LogLikelihoodNats { get; }

    /// <summary>Log of a group's scale in seconds: its median for the log-logistic law, the time 37 in 100 still hold for Weibull's.</summary>
    /// <param name="group">From 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such group.</exception>
    public LogScale ScaleOf(int group)
    {
        Check(group);
        var row = new double[place.Length + 1];
        (row[group], row[^1]) = (1 / slope, -place[group] / (slope * slope));
        return new(place[group] / slope, Error(row));
    }

    /// <summary>How much longer one group holds than another, as the difference of their log scales.</summary>
    /// <param name="group">From 0.</param>
    /// <param name="other">From 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such group.</exception>
    public LogScale Difference(int group, int other)
    {
        Check(group);
        Check(other);
        var row = new double[place.Length + 1];
        row[group] += 1 / slope;
        row[other] -= 1 / slope;
        row[^1] = (place[other] - place[group]) / (slope * slope);
        return new((place[group] - place[other]) / slope, Error(row));
    }

    /// <summary>The time until which a share of a group holds.</summary>
    /// <param name="group">From 0.</param>
    /// <param name="heldFraction">Between 0 and 1; 1/2 for the median.</param>
    /// <returns>None where the curve is so flat that it lies beyond a thousand million seconds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such group; a share that is not between 0 and 1.</exception>
    public double? TimeS(int group, double heldFraction)
    {
        Check(group);
        if (!(heldFraction > 0 && heldFraction < 1))
            throw new ArgumentOutOfRangeException(nameof(heldFraction), heldFraction, "A share lies between 0 and 1, both left out.");
        var z = Law == HoldLaw.Weibull ? Math.Log(-Math.Log(heldFraction)) : Math.Log((1 - heldFraction) / heldFraction);
        var time = Math.Exp((place[group] + z) / slope);
        return time < 1e9 ? time : null;
    }

    /// <summary>The share of a group that holds beyond a time, with its range.</summary>
    /// <param name="group">From 0.</param>
    /// <param name="timeS">More than 0.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such group; a time that is not more than 0; a confidence that is not between 0 and 1.</exception>
    public HeldRange Held(int group, double timeS, double confidenceFraction)
    {
        Check(group);
        if (!(timeS > 0 && double.IsFinite(timeS))) throw new ArgumentOutOfRangeException(nameof(timeS), timeS, "A time is more than 0 seconds.");
        Confidence.Check(confidenceFraction);
        var z = slope * Math.Log(timeS) - place[group];
        var row = new double[place.Length + 1];
        (row[group], row[^1]) = (-1, Math.Log(timeS));
        var half = Confidence.HalfWidthSd(confidenceFraction) * Error(row);
        return new(LawTerm.Held(Law, z), LawTerm.Held(Law, z + half), LawTerm.Held(Law, z - half));
    }

    private double Error(double[] row)
    {
        var sum = 0.0;
        for (var a = 0; a < row.Length; a++)
            for (var b = 0; b < row.Length; b++)
                sum += row[a] * covariance[a, b] * row[b];
        return Math.Sqrt(Math.Max(0, sum));
    }

    private void Check(int group)
    {
        if (group < 0 || group >= place.Length)
            throw new ArgumentOutOfRangeException(nameof(group), group, $"Groups are numbered from 0 to {place.Length - 1}.");
    }
}
