using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Pupils;

namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>The likeliest border at one pair of spreads, with the curvature there.</summary>
/// <param name="Scales">The pair.</param>
/// <param name="Border">Coefficients, then residuals.</param>
/// <param name="Pupils">The same as rows, with each pupil's peak.</param>
/// <param name="Factor">The information of the border, factored: its inverse is the border's covariance.</param>
/// <param name="LogJoint">Log-likelihood with abilities integrated out, plus the log density of the border beforehand.</param>
/// <param name="LogLikelihood">Without the latter.</param>
/// <param name="Slopes">Derivatives of the log joint by the logarithms of the two spreads, the border held where it is.</param>
/// <param name="Rounds">Passes over the pupils.</param>
/// <param name="DistanceSd">How far the search still was from its end, in standard errors.</param>
internal sealed record BorderPoint(
    Scales Scales, double[] Border, PupilPoint Pupils, Cholesky Factor, double LogJoint, double LogLikelihood, Scales Slopes, int Rounds, double DistanceSd)
{
    private readonly Lazy<double[]> _covariance = new(Factor.Inverse);

    /// <summary>Log evidence by Laplace's approximation over the border.</summary>
    public double LogEvidence => LogJoint + (Border.Length * Math.Log(2 * Math.PI) - Factor.LogDeterminant) / 2;

    public double[] Covariance => _covariance.Value;
}
