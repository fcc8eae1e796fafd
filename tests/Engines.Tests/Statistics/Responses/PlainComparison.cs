using MathNet.Numerics.LinearAlgebra;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Holds a fit at given spreads against the plain version: same peak, same curvature, same evidence.</summary>
internal static class PlainComparison
{
    public static void Check(ResponseData data, ResponseOptions options, double tolerance, double curvatureTolerance)
    {
        var plain = new PlainModel(data, options);
        var fit = ResponseModel.Fit(data, options);
        Assert.Equal(plain.Names, fit.Coefficients.Select(c => c.Kind == CoefficientKind.DoseSlope ? $"{c.Kind} {c.Index}" : $"{c.Kind}"));
        var coefficients = fit.Coefficients.Select(c => c.Value.MeanLogits).ToArray();
        double[] border = [.. coefficients, .. data.Levels.Select((level, j) => fit.Difficulty(j)!.Value.MeanLogits - FromCoefficients(fit, level))];

        Assert.False(fit.Cautions.HasFlag(ResponseCaution.NotConverged));
        var information = plain.Information(border);
        var covariance = information.Inverse();
        // How far the plain version would still go, in its own standard errors.
        var gradient = Vector<double>.Build.Dense(plain.Gradient(border));
        Assert.Equal(0, Math.Sqrt(Math.Abs(gradient * covariance * gradient)), tolerance);
        for (var k = 0; k < coefficients.Length; k++) Assert.Equal(Math.Sqrt(covariance[k, k]), fit.Coefficients[k].Value.SdLogits, curvatureTolerance);
        var evidence = plain.LogJoint(border) + border.Length / 2.0 * Math.Log(2 * Math.PI) - 0.5 * Math.Log(information.Determinant());
        Assert.Equal(evidence, fit.EvidenceNats!.Value, curvatureTolerance);
    }

    private static double FromCoefficients(ResponseFit fit, ResponseLevel level)
    {
        var sum = 0.0;
        foreach (var c in fit.Coefficients)
        {
            sum += c.Value.MeanLogits * (c.Kind switch
            {
                CoefficientKind.Middle => 1,
                CoefficientKind.DoseSlope => level.Dose is { } d && (int)d.Measure == c.Index ? d.HardnessLogits : 0,
                CoefficientKind.Order => level.OrderLogits ?? 0,
                _ => 0,
            });
        }
        return sum;
    }
}
