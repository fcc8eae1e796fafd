namespace Slantwise.Engines.Statistics.Holds;

/// <summary>How long holds last, assuming no curve, where some falls were not timed: dropping those would flatter.</summary>
/// <remarks>
/// The likeliest shares: with exact times and stopped holds only they are Kaplan and Meier's, with judged holds only the best falling shares by
/// target. Source: [Turnbull1976].
/// </remarks>
public static class Turnbull
{
    /// <summary>The curve of some holds of one task.</summary>
    /// <param name="holds">Any number, any order. A span is after its beginning up to its end; an exact one is that time.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A span that ends before it begins, at 0, or is not finite; a confidence that is not between 0 and 1.</exception>
    public static SpanCurve Fit(IReadOnlyList<PupilSpan> holds, double confidenceFraction)
    {
        Confidence.Check(confidenceFraction);
        foreach (var (span, _) in holds) HoldFit.Check(span);

        // A span from 0 without end says nothing.
        var told = holds.Where(h => h.Span is not { LowS: 0, HighS: null }).ToList();
        var pupils = told.Where(h => h.Pupil is not null).Select(h => h.Pupil).Distinct().Count() + told.Count(h => h.Pupil is null);
        var fallen = told.Count(h => h.Span.HighS is not null);
        var cautions = CautionsOf(told, fallen, pupils);
        if (told.Count == 0) return new([], 0, 0, 0, cautions);

        var search = new SpanSearch(told.Select(h => h.Span).Distinct().ToList());
        var weights = search.WeightsOf(told.Select(h => h.Span));
        if (search.Shares(weights, null) is not { } masses) return new([], told.Count, fallen, pupils, cautions | HoldCautions.NotConverged);

        var errors = Errors(told, search, weights, masses);
        var z = Confidence.HalfWidthSd(confidenceFraction);
        var (share, steps) = (1.0, new List<SpanStep>());
        for (var j = 0; j < masses.Length; j++)
        {
            // A stretch the likeliest curve does not fall in is no step.
            if (masses[j] < 1e-9) continue;
            share = search.IsLast(j) ? 0 : Math.Max(0, share - masses[j]);
            if (share < 1e-9) share = 0;
            var (from, to) = search.Stretch(j);
            if (share == 0 || errors is null)
            {
                steps.Add(new(from, to, share, null, null, null));
                continue;
            }
            var bend = z * errors[j] / (share * Math.Log(share));
            steps.Add(new(from, to, share, errors[j], Math.Pow(share, Math.Exp(-bend)), Math.Pow(share, Math.Exp(bend))));
        }
        return new(steps, told.Count, fallen, pupils, cautions);
    }

    private static HoldCautions CautionsOf(List<PupilSpan> told, int fallen, int pupils)
    {
        if (told.Count == 0) return HoldCautions.NoHolds;
        return (told.Count < KaplanMeier.FewHolds ? HoldCautions.FewHolds : 0) | (fallen == 0 ? HoldCautions.NobodyFell : 0)
            | (told.Where(h => h.Span.HighS is null).Select(h => h.Span.LowS).Distinct().Skip(1).Any() ? HoldCautions.MixedTargets : 0)
            | (pupils < KaplanMeier.FewPupils ? HoldCautions.FewPupils : 0);
    }

    private static double[]? Errors(List<PupilSpan> told, SpanSearch search, double[] weights, double[] masses)
    {
        var units = told.Where(h => h.Pupil is not null).GroupBy(h => h.Pupil).Select(g => (Weights: search.WeightsOf(g.Select(h => h.Span)), Count: 1))
            // Strangers with the same span leave the same curve behind.
            .Concat(told.Where(h => h.Pupil is null).GroupBy(h => h.Span).Select(g => (Weights: search.WeightsOf([g.Key]), Count: g.Count()))).ToList();
        var spreads = masses.Select(_ => new MeanSquare()).ToArray();
        foreach (var (own, count) in units)
        {
            var rest = weights.Zip(own, (all, part) => all - part).ToArray();
            if (rest.Sum() == 0 || search.Shares(rest, masses) is not { } without) return null;
            for (var copy = 0; copy < count; copy++)
            {
                var share = 1.0;
                for (var j = 0; j < masses.Length; j++) spreads[j].Add(share -= without[j]);
            }
        }
        return spreads.Select(s => s.JackknifeError).ToArray();
    }
}
