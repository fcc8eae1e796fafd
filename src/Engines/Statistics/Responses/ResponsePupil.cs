namespace Slantwise.Engines.Statistics.Responses;

/// <summary>One pupil as the model sees it: no name, only what was known before the first trial.</summary>
/// <param name="Prediction">The pupil's own prediction before the first trial; none where it is missing.</param>
public sealed record ResponsePupil(FirstPrediction? Prediction = null)
{
    /// <summary>More covariates of pupils, fixed before the first trial: each pupil of a fit lists the same number of them, in the same order.</summary>
    public IReadOnlyList<double> Covariates { get; init; } = [];
}
