namespace Slantwise.Engines.Statistics.Predictions;

/// <summary>How predicted chances compare with what came.</summary>
/// <param name="SetCount">Predictions with a trial.</param>
/// <param name="TrialCount">Their trials.</param>
/// <param name="BaseRateFraction">The share that succeeded, 0 to 1; this and the rest none without a trial.</param>
/// <param name="BiasFraction">Mean of prediction less result over trials, −1 to 1: above 0 more was expected than came.</param>
/// <param name="AbsoluteErrorFraction">Mean distance of a set's prediction from its share of successes, sets weighted by their trials, 0 to 1.</param>
/// <param name="BrierFraction">Mean squared distance of prediction and result over single trials, 0 to 1; smaller is better, 1/4 is saying a half each time.</param>
/// <param name="LogLossNats">Mean surprise at the results, 0 or more; none also where something called certain did not happen.</param>
/// <param name="SkillFraction">How much of the Brier score of always saying the base rate is saved, at most 1, below 0 where saying the base rate would have been better; none also where all trials ended alike.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>A missing prediction is missing, not wrong: leave it out. Source: [Brier1950].</remarks>
public readonly record struct PredictionScores(
    int SetCount, int TrialCount, double? BaseRateFraction, double? BiasFraction, double? AbsoluteErrorFraction,
    double? BrierFraction, double? LogLossNats, double? SkillFraction, PredictionCautions Cautions)
{
    /// <summary>The scores of some predictions.</summary>
    /// <param name="forecasts">Any number, any order.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance outside 0 to 1; successes below 0 or above the trials.</exception>
    public static PredictionScores Of(IReadOnlyList<Forecast> forecasts)
    {
        var said = Forecast.Checked(forecasts);
        var cautions = Forecast.CautionsOf(said);
        if (said.Count == 0) return new(0, 0, null, null, null, null, null, null, cautions);

        var n = said.Sum(f => f.TrialCount);
        double Mean(Func<Forecast, double> each) => said.Sum(f => f.TrialCount * each(f)) / n;
        var rate = Mean(f => f.Outcome);
        var brier = Mean(f => f.Outcome * Square(f.PredictedFraction - 1) + (1 - f.Outcome) * Square(f.PredictedFraction));
        var wrong = said.Any(f => (f.PredictedFraction == 0 && f.SuccessCount > 0) || (f.PredictedFraction == 1 && f.SuccessCount < f.TrialCount));
        double? loss = wrong ? null : Mean(f => Surprise(f.PredictedFraction, f.Outcome) + Surprise(1 - f.PredictedFraction, 1 - f.Outcome));
        return new(
            said.Count, n, rate, Mean(f => f.PredictedFraction - f.Outcome), Mean(f => Math.Abs(f.PredictedFraction - f.Outcome)), brier, loss,
            cautions.HasFlag(PredictionCautions.OneOutcome) ? null : 1 - brier / (rate * (1 - rate)),
            wrong ? cautions | PredictionCautions.CertainAndWrong : cautions);
    }

    /// <summary>On which side of the results the predictions lie; none without a trial.</summary>
    /// <param name="toleranceFraction">A bias up to this, either way, is close; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative tolerance.</exception>
    public PredictionDirection? Direction(double toleranceFraction)
    {
        if (!(toleranceFraction >= 0)) throw new ArgumentOutOfRangeException(nameof(toleranceFraction), toleranceFraction, "A tolerance is 0 or more.");
        return BiasFraction is { } bias ? PredictionBias.DirectionOf(bias, toleranceFraction) : null;
    }

    private static double Surprise(double chance, double share) => share == 0 ? 0 : -share * Math.Log(chance);

    private static double Square(double x) => x * x;
}
