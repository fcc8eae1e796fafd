namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>A pupil's ability given the rows, and how it would move with them.</summary>
/// <param name="Mean">Mean of the part of ability that rows do not say.</param>
/// <param name="Variance">Its variance given the rows.</param>
/// <param name="Slopes">Derivative of the mean by row: own levels, then growth, slope, covariates together.</param>
internal readonly record struct PupilPosterior(double Mean, double Variance, double[] Slopes);
