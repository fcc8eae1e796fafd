namespace Slantwise.Engines.Statistics.Holds;

/// <summary>How long holds last, from timed, stopped and merely judged holds alike.</summary>
/// <param name="Steps">The stretches in which holds ended, in order of time; empty without a hold or where the search did not arrive.</param>
/// <param name="HoldCount">The holds.</param>
/// <param name="FallenCount">Those known to have ended.</param>
/// <param name="PupilCount">The pupils; as many as holds where no pupil is named.</param>
/// <param name="Cautions">What to know before believing it.</param>
public sealed record SpanCurve(IReadOnlyList<SpanStep> Steps, int HoldCount, int FallenCount, int PupilCount, HoldCautions Cautions)
{
    /// <summary>The least share that may still be held after a time: within a stretch, all that end in it are taken to have ended.</summary>
    /// <param name="timeS">0 or more.</param>
    /// <returns>None without a curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time that is negative or not a number.</exception>
    public double? LeastFraction(double timeS) => Fraction(timeS, step => step.FromS < timeS || step.ToS <= timeS);

    /// <summary>The most that may still be held after a time: within a stretch, none is taken to have ended.</summary>
    /// <param name="timeS">0 or more.</param>
    /// <returns>None without a curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time that is negative or not a number.</exception>
    public double? MostFraction(double timeS) => Fraction(timeS, step => step.ToS <= timeS);

    private double? Fraction(double timeS, Func<SpanStep, bool> hasPassed)
    {
        if (!(timeS >= 0)) throw new ArgumentOutOfRangeException(nameof(timeS), timeS, "A time is 0 seconds or more.");
        if (Steps.Count == 0) return null;
        var share = 1.0;
        foreach (var step in Steps.TakeWhile(hasPassed)) share = step.HeldFraction;
        return share;
    }
}
