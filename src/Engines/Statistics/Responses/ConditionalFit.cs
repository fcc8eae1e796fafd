using Slantwise.Engines.Statistics.Responses.Border;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What a conditional fit found. Only differences of levels mean anything: difficulties are given about the mean of the levels that were tried.</summary>
public sealed class ConditionalFit
{
    private readonly BorderDesign _design;
    private readonly bool[] _isTried;
    private readonly int _triedCount;

    internal ConditionalFit(ResponseData data, BorderDesign design, BorderPoint? point, bool[] isTried)
    {
        (_design, Point, _isTried, _triedCount) = (design, point, isTried, isTried.Count(t => t));
        TrialCount = data.Trials.Sum(t => t.Trials);
    }

    /// <summary>How many trials there are.</summary>
    public int TrialCount { get; }

    /// <summary>The log-likelihood of which trials succeeded, given how many; none where no finite fit exists.</summary>
    public double? LogLikelihoodNats => Point?.LogLikelihood;

    /// <summary>What to mind about the whole.</summary>
    public ResponseCaution Cautions => Point is null ? ResponseCaution.OneSided : Point.DistanceSd < Distance ? ResponseCaution.None : ResponseCaution.NotConverged;

    internal double Distance { get; init; }

    internal BorderPoint? Point { get; }

    /// <summary>What the class gains a lesson; none where there is only one lesson or no finite fit.</summary>
    public Estimate? Growth => _design.Layout.HasGrowth && Of(SlopesOf(CoefficientKind.Growth, 0)) is var (value, sd) ? new(value, sd, 1, Cautions) : null;

    /// <summary>How much harder a level is than the levels that were tried are on average. What was assumed about their common middle is neither in it nor in its doubt.</summary>
    /// <param name="level">An index into the levels.</param>
    /// <returns>None for a level that nobody tried, or where no finite fit exists.</returns>
    public Estimate? Difficulty(int level)
    {
        if (!_isTried[level]) return null;
        var byLevel = new double[_design.Layout.Levels];
        for (var j = 0; j < byLevel.Length; j++) if (_isTried[j]) byLevel[j] = -1.0 / _triedCount;
        byLevel[level] += 1;
        return Weighted(byLevel);
    }

    /// <summary>How much harder one level is than another.</summary>
    /// <param name="harder">An index into the levels.</param>
    /// <param name="easier">Another.</param>
    /// <returns>None where either has no difficulty.</returns>
    public Estimate? Contrast(int harder, int easier) => !_isTried[harder] || !_isTried[easier] ? null : Weighted(Difference(harder, easier));

    /// <summary>Value and standard error of a sum over border.</summary>
    internal (double Value, double Sd)? Of(double[] slopes)
    {
        if (Point is null) return null;
        var (value, levels) = (0.0, 0.0);
        for (var k = 0; k < slopes.Length; k++)
        {
            value += slopes[k] * Point.Border[k];
            if (k >= _design.Columns.Count) levels += slopes[k];
        }
        return (value, Math.Sqrt(Math.Max(0, Point.Factor.InverseForm(slopes) - levels * levels * _design.Prior.CentringVariance)));
    }

    internal double[] SlopesOf(CoefficientKind kind, int index) => [.. _design.Columns.Select(c => c.Kind == kind && c.Index == index ? 1.0 : 0), .. new double[_design.Layout.Levels]];

    internal double[] SlopesOf(double[] byLevel) => _design.ToBorder([.. byLevel, .. new double[_design.Layout.RowCount - byLevel.Length]]);

    private double[] Difference(int harder, int easier)
    {
        var byLevel = new double[_design.Layout.Levels];
        byLevel[harder] += 1;
        byLevel[easier] -= 1;
        return byLevel;
    }

    private Estimate? Weighted(double[] byLevel) => Of(SlopesOf(byLevel)) is var (value, sd) ? new(value, sd, 1, Cautions) : null;
}
