namespace Slantwise.Engines.Statistics.Holds;

/// <summary>How long holds last: the share still held after each time, with its range.</summary>
/// <param name="Steps">One for each time at which a hold ended or was stopped, in order of time; empty without a hold.</param>
/// <param name="HoldCount">The holds.</param>
/// <param name="FallenCount">Those that ended; the others were stopped while held.</param>
/// <param name="PupilCount">The pupils; as many as holds where no pupil is named.</param>
/// <param name="IsByPupil">Whether the errors come from leaving out one pupil at a time, as they do where a pupil has several holds; otherwise each hold is taken for somebody else's.</param>
/// <param name="Median">How long half of them lasted.</param>
/// <param name="Cautions">What to know before believing it.</param>
public sealed record HoldCurve(
    IReadOnlyList<SurvivalStep> Steps, int HoldCount, int FallenCount, int PupilCount, bool IsByPupil, MedianHold Median, HoldCautions Cautions)
{
    /// <summary>The share still held just after a time.</summary>
    /// <param name="timeS">0 or more.</param>
    /// <returns>None after the last time seen, unless nobody was left by then.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time that is negative or not a number.</exception>
    public double? HeldFraction(double timeS)
    {
        if (!(timeS >= 0)) throw new ArgumentOutOfRangeException(nameof(timeS), timeS, "A time is 0 seconds or more.");
        if (Steps.Count == 0 || (timeS > Steps[^1].TimeS && Steps[^1].HeldFraction > 0)) return null;
        var share = 1.0;
        foreach (var step in Steps.TakeWhile(s => s.TimeS <= timeS)) share = step.HeldFraction;
        return share;
    }

    /// <summary>The mean length of a hold when each is stopped at a limit: the area under the curve up to there.</summary>
    /// <param name="limitS">More than 0.</param>
    /// <returns>None where the limit lies after the last time seen and somebody still held by then.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A limit that is not more than 0.</exception>
    public double? MeanS(double limitS)
    {
        if (!(limitS > 0)) throw new ArgumentOutOfRangeException(nameof(limitS), limitS, "A limit is more than 0 seconds.");
        if (HeldFraction(limitS) is null) return null;
        double area = 0, from = 0, share = 1;
        foreach (var step in Steps.TakeWhile(s => s.TimeS < limitS))
        {
            area += share * (step.TimeS - from);
            (from, share) = (step.TimeS, step.HeldFraction);
        }
        return share == 0 ? area : area + share * (limitS - from);
    }
}
