namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>Where each quantity stands that pupils' likelihoods depend on: levels' difficulties first, then growth, the slope of holds, covariates of pupils, and the logarithm of the spread of abilities where that is searched for together with the rest.</summary>
internal sealed record RowLayout(int Levels, bool HasGrowth, bool HasShape, int Covariates, bool HasSpread)
{
    public int GrowthRow => HasGrowth ? Levels : -1;

    public int ShapeRow => HasShape ? Levels + (HasGrowth ? 1 : 0) : -1;

    public int FirstCovariateRow => Levels + (HasGrowth ? 1 : 0) + (HasShape ? 1 : 0);

    public int SpreadRow => HasSpread ? FirstCovariateRow + Covariates : -1;

    public int RowCount => FirstCovariateRow + Covariates + (HasSpread ? 1 : 0);

    /// <summary>How many rows one pupil fills besides the own levels: growth, slope, spread, and one for all covariates together.</summary>
    public int ExtraCount => (HasGrowth ? 1 : 0) + (HasShape ? 1 : 0) + (HasSpread ? 1 : 0) + (Covariates > 0 ? 1 : 0);
}
