namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>What was known of each pupil before the first trial, as numbers.</summary>
internal static class PupilCovariates
{
    /// <summary>One row a pupil, and what each column is.</summary>
    /// <remarks>
    /// A prediction becomes the ability it would take: the logit of the chance plus what the level's difficulty was held for beforehand. It is centred over
    /// the pupils who made one; the others stand at the centre and have a coefficient of their own.
    /// </remarks>
    public static (double[][] Values, List<(CoefficientKind Kind, int Index, NormalPrior Prior)> Columns) Of(ResponseData data, ResponsePriors priors)
    {
        var pupils = data.Pupils;
        var columns = new List<(CoefficientKind, int, NormalPrior)>();
        var implied = pupils.Select(p => p.Prediction is { } made ? Implied(made, data.Levels[made.Level], priors) : double.NaN).ToArray();
        var (hasAny, hasGaps) = (implied.Any(double.IsFinite), implied.Any(double.IsNaN));
        var centre = hasAny ? implied.Where(double.IsFinite).Average() : 0;
        if (hasAny) columns.Add((CoefficientKind.Prediction, 0, priors.Prediction));
        if (hasAny && hasGaps) columns.Add((CoefficientKind.NoPrediction, 0, priors.PupilCovariate));
        for (var m = 0; pupils.Count > 0 && m < pupils[0].Covariates.Count; m++) columns.Add((CoefficientKind.PupilCovariate, m, priors.PupilCovariate));

        var values = new double[pupils.Count][];
        // Where nothing is known of anybody all share one empty row.
        if (columns.Count == 0) Array.Fill(values, []);
        else for (var i = 0; i < values.Length; i++)
        {
            values[i] = [.. columns.Select(c => c.Item1 switch
            {
                CoefficientKind.Prediction => double.IsNaN(implied[i]) ? 0 : implied[i] - centre,
                CoefficientKind.NoPrediction => double.IsNaN(implied[i]) ? 1 : 0,
                _ => pupils[i].Covariates[c.Item2],
            })];
        }
        return (values, columns);
    }

    private static double Implied(FirstPrediction prediction, ResponseLevel level, ResponsePriors priors)
    {
        // Children say "none" and "all" lightly: beyond 1 in 20 the logit would run away.
        var chance = Math.Clamp(prediction.ChanceFraction, 0.05, 0.95);
        return Math.Log(chance / (1 - chance)) + priors.DoseSlope.MeanLogits * (level.Dose?.HardnessLogits ?? 0) + priors.Order.MeanLogits * (level.OrderLogits ?? 0);
    }
}
