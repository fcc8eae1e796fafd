namespace Slantwise.Bench.Accuracy;

/// <summary>Logistic regression with a ridge, by Newton's steps.</summary>
/// <remarks>Source: [Cox1958] the model; [HoerlKennard1970] the ridge.</remarks>
internal static class LogisticFit
{
    /// <summary>The coefficients with the largest penalised likelihood.</summary>
    /// <param name="rows">Terms of each case, all equally many, the first 1.</param>
    /// <param name="marked">Which cases are marked.</param>
    /// <param name="weights">What each case counts.</param>
    /// <param name="ridge">Half of it times the square of each coefficient but the first is taken off.</param>
    public static double[] Of(IReadOnlyList<double[]> rows, IReadOnlyList<bool> marked, IReadOnlyList<double> weights, double ridge)
    {
        var n = rows[0].Length;
        var b = new double[n];
        for (var step = 0; step < 100; step++)
        {
            var (gradient, curve) = (new double[n], new double[n, n]);
            for (var i = 0; i < rows.Count; i++)
            {
                var x = rows[i];
                var logit = 0.0;
                for (var k = 0; k < n; k++) logit += b[k] * x[k];
                var p = 1 / (1 + Math.Exp(-logit));
                var (error, weight) = (weights[i] * ((marked[i] ? 1 : 0) - p), weights[i] * p * (1 - p));
                for (var k = 0; k < n; k++)
                {
                    gradient[k] += error * x[k];
                    for (var j = 0; j <= k; j++) curve[k, j] += weight * x[k] * x[j];
                }
            }
            for (var k = 0; k < n; k++)
            {
                var held = k == 0 ? 1e-6 : ridge;
                gradient[k] -= held * b[k];
                curve[k, k] += held;
                for (var j = 0; j < k; j++) curve[j, k] = curve[k, j];
            }
            var move = Solved(curve, gradient);
            // Far from the top a whole step can overshoot.
            var longest = move.Max(Math.Abs);
            var share = longest > 5 ? 5 / longest : 1;
            for (var k = 0; k < n; k++) b[k] += share * move[k];
            if (longest < 1e-7) break;
        }
        return b;
    }

    private static double[] Solved(double[,] curve, double[] gradient) =>
        MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfArray(curve).Cholesky()
            .Solve(MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(gradient)).ToArray();
}
