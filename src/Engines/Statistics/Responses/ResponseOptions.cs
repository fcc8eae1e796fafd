namespace Slantwise.Engines.Statistics.Responses;

/// <summary>How a fit is made.</summary>
public sealed record ResponseOptions
{
    /// <summary>What is assumed before any data.</summary>
    public ResponsePriors Priors { get; init; } = ResponsePriors.Standard;

    /// <summary>
    /// No assumption but a normal spread of abilities: each level has a difficulty of its own, found with the spread by maximum marginal likelihood.
    /// Priors, orders and doses are then unused. For comparison with other programs; not for a class's page.
    /// </summary>
    public bool IsFlat { get; init; }

    /// <summary>Where given, the spread of abilities is this and not estimated.</summary>
    public double? AbilitySdLogits { get; init; }

    /// <summary>Where given, the spread of the levels' residuals is this and not estimated.</summary>
    public double? ResidualSdLogits { get; init; }

    /// <summary>How far a pupil's ability may well wander from one lesson to the next, beyond the class's growth; 0 for no wandering.</summary>
    public double DriftSdLogits { get; init; } = 0.2;

    /// <summary>Whether the class may grow by the same amount each lesson. Without a second lesson it makes no difference.</summary>
    public bool HasGrowth { get; init; } = true;

    /// <summary>Points at which each pupil's ability is integrated, 3 to 61.</summary>
    public int NodeCount { get; init; } = 7;

    /// <summary>Up to how many pupils the answer is averaged over the two spreads instead of taken at the likeliest pair.</summary>
    public int GridPupilCount { get; init; } = 300;

    /// <summary>Up to how many pupils the levels are also read with abilities conditioned away, to see whether choice mattered; 0 for never.</summary>
    public int ChoicePupilCount { get; init; } = 3000;

    /// <summary>To what the stopwatch was read: a fall shown as 3.2 s lies within half of this of it.</summary>
    public double StopwatchStepS { get; init; } = 0.1;

    /// <summary>A failed hold shorter than this did not get into the position: it counts as failed, but its time says nothing about holding. 0 to use all times.</summary>
    public double FirstMomentS { get; init; } = 1;

    /// <summary>When a search ends: the distance still to go, in standard errors; for the two spreads a hundred times that, at most a tenth. Deviations are right to about its root.</summary>
    public double ToleranceSd { get; init; } = 1e-5;

    /// <summary>What the spreads' part of a step may still gain at the end, in log density: half the square of the distance in standard errors.</summary>
    internal double SpreadGain => SpreadToleranceSd * SpreadToleranceSd / 2;

    internal double SpreadToleranceSd => Math.Min(0.1, 100 * ToleranceSd);

    /// <summary>Checks the ranges.</summary>
    /// <exception cref="ArgumentException">An option outside its range.</exception>
    internal void Check()
    {
        if (NodeCount is < 3 or > 61) throw new ArgumentException($"{NodeCount} nodes: between 3 and 61.", nameof(NodeCount));
        if (!(DriftSdLogits >= 0 && DriftSdLogits < 5)) throw new ArgumentException($"A drift of {DriftSdLogits}: between 0 and 5 logits.", nameof(DriftSdLogits));
        if (!(AbilitySdLogits is null or > 0) || !(ResidualSdLogits is null or > 0))
            throw new ArgumentException("A spread is more than 0.", nameof(AbilitySdLogits));
        if (!(StopwatchStepS > 0)) throw new ArgumentException($"A stopwatch read to {StopwatchStepS} s: more than 0.", nameof(StopwatchStepS));
        if (!(FirstMomentS >= 0)) throw new ArgumentException($"A first moment of {FirstMomentS} s: 0 or more.", nameof(FirstMomentS));
        if (!(ToleranceSd > 0)) throw new ArgumentException("A tolerance is more than 0.", nameof(ToleranceSd));
        if (!(Priors.TaskShareFraction >= 0 && Priors.TaskShareFraction < 1))
            throw new ArgumentException("A task's share is from 0 to below 1.", nameof(Priors));
    }
}
