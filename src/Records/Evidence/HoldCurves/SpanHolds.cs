using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Holds;

namespace Slantwise.Records.Evidence.HoldCurves;

/// <summary>The curve of a level where some falls were not timed: each of those ended somewhere before the dose.</summary>
internal static class SpanHolds
{
    // A stretch up to this wide is drawn as one time: no wider than the watch is read.
    private const double WatchS = 0.1;

    /// <summary>The curve as steps.</summary>
    /// <returns>None where the data leave open by more than the watch's rounding when holds ended.</returns>
    public static HoldCurve? Of(IReadOnlyList<(int Pupil, HoldAttempt Attempt)> tries, double doseS)
    {
        var found = Turnbull.Fit([.. tries.Select(t => new PupilSpan(SpanOf(t.Attempt, doseS), t.Pupil))], SuccessShare.RangeConfidenceFraction);
        if (found.Steps.Count == 0 || found.Steps.Any(s => s.ToS - s.FromS > WatchS)) return null;

        var lengths = tries.Select(t => (HeldS: LengthOf(t.Attempt, doseS), t.Attempt.HasReachedDose)).Where(l => l.HeldS is not null).ToList();
        var steps = found.Steps.Where(s => s.ToS is not null).Select(s => new SurvivalStep(
            s.ToS!.Value, lengths.Count(l => l.HeldS >= s.ToS), lengths.Count(l => !l.HasReachedDose && l.HeldS >= s.FromS && l.HeldS <= s.ToS), 0,
            s.HeldFraction, s.ErrorFraction, s.LowFraction, s.HighFraction)).ToList();
        var reached = lengths.Count(l => l.HasReachedDose);
        if (reached > 0 && steps.Count > 0 && steps[^1].TimeS < doseS)
            steps.Add(steps[^1] with { TimeS = doseS, AtRiskCount = reached, FallenCount = 0, StoppedCount = reached });
        return new(steps, found.HoldCount, found.FallenCount, found.PupilCount, true, MedianOf(steps), found.Cautions);
    }

    private static HoldSpan SpanOf(HoldAttempt attempt, double doseS) => attempt switch
    {
        { HasReachedDose: true } => new(doseS, null),
        { HeldS: > 0 and var held } => new(held, held),
        { HeldS: not null } => new(0, WatchS),
        _ => new(0, doseS),
    };

    private static double? LengthOf(HoldAttempt attempt, double doseS) => attempt.HasReachedDose ? doseS : attempt.HeldS;

    private static MedianHold MedianOf(IReadOnlyList<SurvivalStep> steps)
    {
        double? First(Func<SurvivalStep, double?> share) => steps.Where(s => share(s) <= .5).Select(s => (double?)s.TimeS).FirstOrDefault();
        return new(First(s => s.HeldFraction), First(s => s.LowFraction), First(s => s.HighFraction));
    }
}
