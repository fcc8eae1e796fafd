using Slantwise.Engines.Statistics.Responses.Border;
using Slantwise.Engines.Statistics.Responses.Pupils;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>Means and variances of anything that is linear in abilities and border, averaged over the spreads or corrected for them.</summary>
internal sealed class Posterior(BorderDesign design, ScalePeak peak, WeightedPoint[] points, bool isGrid, Func<IAbilityKernel> kernel)
{
    public BorderDesign Design => design;

    public ScalePeak Peak => peak;

    public IReadOnlyList<WeightedPoint> Points => points;

    /// <summary>A sum of coefficients and residuals.</summary>
    /// <param name="slopes">By coefficient and residual.</param>
    public LogitMixture OfBorder(double[] slopes) => Mixture(p => (Dot(slopes, p.Border), Form(slopes, p.Covariance)));

    /// <summary>A pupil's ability plus a sum of rows.</summary>
    /// <param name="pupil">Whose.</param>
    /// <param name="lesson">When.</param>
    /// <param name="byRow">By row of the layout, the pupil's own covariates left out: they are added here.</param>
    /// <param name="own">The levels the pupil has tried.</param>
    /// <returns>One for each sum asked for.</returns>
    public LogitMixture[] OfPupil(int pupil, int lesson, IReadOnlyList<double[]> byRow, ReadOnlySpan<int> own)
    {
        var one = kernel();
        var asked = byRow.Count;
        var ids = own.ToArray();
        var needed = points.Select(p => p.Point).Concat(isGrid ? [] : peak.Sides.SelectMany(s => new[] { s.Above, s.Below })).Distinct<BorderPoint>(ReferenceEqualityComparer.Instance);
        var known = needed.ToDictionary<BorderPoint, BorderPoint, PupilPosterior>(p => p, p => one.Posterior(pupil, lesson, p.Pupils), ReferenceEqualityComparer.Instance);
        var mixtures = new LogitMixture[asked];
        for (var k = 0; k < asked; k++)
        {
            var rows = byRow[k];
            mixtures[k] = Mixture(p =>
            {
                var ability = known[p];
                var total = Total(rows, ability, ids, design.Covariates[pupil]);
                var fixedPart = 0.0;
                for (var r = 0; r < rows.Length; r++) fixedPart += rows[r] * p.Pupils.Rows[r];
                for (var m = 0; m < design.Covariates[pupil].Length; m++)
                    fixedPart += design.Covariates[pupil][m] * p.Pupils.Rows[design.Layout.FirstCovariateRow + m];
                return (ability.Mean + fixedPart, ability.Variance + Form(design.ToBorder(total), p.Covariance));
            });
        }
        return mixtures;
    }

    private double[] Total(double[] rows, PupilPosterior ability, int[] own, double[] covariates)
    {
        var total = (double[])rows.Clone();
        for (var k = 0; k < own.Length; k++) total[own[k]] += ability.Slopes[k];
        var next = own.Length;
        if (design.Layout.HasGrowth) total[design.Layout.GrowthRow] += ability.Slopes[next++];
        if (design.Layout.HasShape) total[design.Layout.ShapeRow] += ability.Slopes[next++];
        if (design.Layout.HasSpread) next++;
        for (var m = 0; m < covariates.Length; m++) total[design.Layout.FirstCovariateRow + m] += covariates[m] * (1 + ability.Slopes[next]);
        return total;
    }

    private LogitMixture Mixture(Func<BorderPoint, (double Mean, double Variance)> at)
    {
        if (isGrid) return new([.. points.Select(p => { var (m, v) = at(p.Point); return (p.Weight, m, v); })]);
        // One pair of spreads only: what the mean would do if they were otherwise is added to first order.
        var (mean, variance) = at(points[0].Point);
        var slopes = peak.Sides.Select((s, a) => (at(s.Above).Mean - at(s.Below).Mean) / Math.Log(ScaleRatio(s))).ToArray();
        for (var a = 0; a < slopes.Length; a++)
            for (var b = 0; b < slopes.Length; b++) variance += slopes[a] * slopes[b] * peak.Covariance[a, b];
        return new([(1, mean, variance)]);
    }

    private static double ScaleRatio((BorderPoint Above, BorderPoint Below) side) =>
        side.Above.Scales.Ability / side.Below.Scales.Ability * (side.Above.Scales.Residual / side.Below.Scales.Residual);

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var k = 0; k < a.Length; k++) sum += a[k] * b[k];
        return sum;
    }

    private static double Form(double[] a, double[] covariance)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] == 0) continue;
            var row = 0.0;
            for (var j = 0; j < a.Length; j++) row += covariance[i * a.Length + j] * a[j];
            sum += a[i] * row;
        }
        return sum;
    }
}
