using MathNet.Numerics.LinearAlgebra;

namespace Slantwise.Engines.Statistics.Responses.Numerics;

/// <summary>Points and weights that integrate a polynomial against the standard normal density without error, up to degree 2n − 1.</summary>
/// <remarks>From the eigenvalues of the three-term recurrence. Source: [GolubWelsch1969] (from memory).</remarks>
internal sealed class GaussHermite
{
    private static readonly GaussHermite Seven = new(7);

    private GaussHermite(int n)
    {
        var recurrence = Matrix<double>.Build.Dense(n, n, (i, j) => Math.Abs(i - j) == 1 ? Math.Sqrt(Math.Max(i, j)) : 0);
        var roots = recurrence.Evd(Symmetricity.Symmetric).EigenValues.Select(v => v.Real).Order().ToArray();
        Nodes = new double[n];
        LogWeights = new double[n];
        for (var i = 0; i < n; i++)
        {
            // Mirror images are averaged: the exact ones are mirror images, rounded ones are not.
            var x = (roots[i] - roots[n - 1 - i]) / 2;
            for (var polish = 0; polish < 2; polish++)
            {
                var (last, before, _) = Polynomials(x, n);
                x -= last / (Math.Sqrt(n) * before);
            }
            Nodes[i] = x;
            LogWeights[i] = -Math.Log(Polynomials(x, n).Squares);
        }
    }

    public double[] Nodes { get; }

    public double[] LogWeights { get; }

    public static GaussHermite Of(int n) => n == 7 ? Seven : new(n);

    /// <summary>The mean of f over a normal distribution.</summary>
    public double Mean(double mean, double sd, Func<double, double> f)
    {
        var sum = 0.0;
        for (var i = 0; i < Nodes.Length; i++) sum += Math.Exp(LogWeights[i]) * f(mean + sd * Nodes[i]);
        return sum;
    }

    /// <summary>The orthonormal polynomials of degree n and n − 1 at a point, and the sum of squares of all below n, whose inverse is the weight of a root.</summary>
    private static (double Last, double Before, double Squares) Polynomials(double x, int n)
    {
        var (last, before, squares) = (1.0, 0.0, 0.0);
        for (var k = 0; k < n; k++)
        {
            squares += last * last;
            (last, before) = ((x * last - Math.Sqrt(k) * before) / Math.Sqrt(k + 1), last);
        }
        return (last, before, squares);
    }
}
