using Slantwise.Engines.Statistics.Responses.Border;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>One spread that is estimated, on its logarithm.</summary>
/// <param name="IsAbility">Of abilities; otherwise of residuals.</param>
/// <param name="Prior">What is assumed about it; none to let the data alone say it.</param>
internal sealed record ScaleAxis(bool IsAbility, ScalePrior? Prior)
{
    public double Start => Math.Log(Prior?.MedianLogits ?? (IsAbility ? 1 : 0.5));

    /// <summary>How far apart likely values are, until the data say it.</summary>
    public double Width => Prior?.LogSd ?? 0.5;

    // Beyond these every level or nobody would matter: an estimate there is the edge, not an answer.
    public double Low => Math.Log(IsAbility ? 0.05 : 0.02);

    public double High => Math.Log(IsAbility ? 10 : 5);

    public double LogDensity(double log) => Prior is not { } p ? 0
        : -0.5 * Math.Pow((log - Math.Log(p.MedianLogits)) / p.LogSd, 2) - Math.Log(p.LogSd * Math.Sqrt(2 * Math.PI));

    public double LogDensitySlope(double log) => Prior is not { } p ? 0 : -(log - Math.Log(p.MedianLogits)) / (p.LogSd * p.LogSd);

    public Scales With(Scales scales, double log) => IsAbility ? scales with { Ability = Math.Exp(log) } : scales with { Residual = Math.Exp(log) };

    public static ScaleAxis[] Of(ResponseOptions options)
    {
        var axes = new List<ScaleAxis>();
        if (options.AbilitySdLogits is null) axes.Add(new(true, options.IsFlat ? null : options.Priors.Ability));
        if (options.ResidualSdLogits is null && !options.IsFlat) axes.Add(new(false, options.Priors.Residual));
        return [.. axes];
    }
}
