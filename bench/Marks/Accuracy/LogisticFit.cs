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
        var likelihood = Penalised(rows, marked, weights, ridge, b);
        for (var step = 0; step < 200; step++)
        {
            var (gradient, curve) = Slopes(rows, marked, weights, ridge, b);
            var move = Solved(curve, gradient);
            // A whole step can overshoot where cases are almost parted: it is halved until it climbs.
            for (var share = 1.0; ; share /= 2)
            {
                if (share < 1e-6) return b;
                var next = b.Zip(move, (from, by) => from + share * by).ToArray();
                var climbed = Penalised(rows, marked, weights, ridge, next);
                if (!(climbed > likelihood)) continue;
                (var gain, likelihood, b) = (climbed - likelihood, climbed, next);
                if (gain < 1e-7) return b;
                break;
            }
        }
        return b;
    }

    private static double Penalised(IReadOnlyList<double[]> rows, IReadOnlyList<bool> marked, IReadOnlyList<double> weights, double ridge, double[] b)
    {
        var sum = -.5 * ridge * b.Skip(1).Sum(c => c * c);
        for (var i = 0; i < rows.Count; i++)
        {
            var logit = Logit(rows[i], b);
            sum -= weights[i] * (Math.Max(0, logit) + Math.Log(1 + Math.Exp(-Math.Abs(logit))) - (marked[i] ? logit : 0));
        }
        return sum;
    }

    private static (double[] Gradient, double[,] Curve) Slopes(
        IReadOnlyList<double[]> rows, IReadOnlyList<bool> marked, IReadOnlyList<double> weights, double ridge, double[] b)
    {
        var n = b.Length;
        var (gradient, curve) = (new double[n], new double[n, n]);
        for (var i = 0; i < rows.Count; i++)
        {
            var x = rows[i];
            var p = 1 / (1 + Math.Exp(-Logit(x, b)));
            var (error, weight) = (weights[i] * ((marked[i] ? 1 : 0) - p), weights[i] * p * (1 - p));
            for (var k = 0; k < n; k++)
            {
                gradient[k] += error * x[k];
                for (var j = 0; j <= k; j++) curve[k, j] += weight * x[k] * x[j];
            }
        }
        for (var k = 0; k < n; k++)
        {
            var held = k == 0 ? 0 : ridge;
            gradient[k] -= held * b[k];
            // Just enough that the matrix can be taken apart.
            curve[k, k] += held + 1e-9;
            for (var j = 0; j < k; j++) curve[j, k] = curve[k, j];
        }
        return (gradient, curve);
    }

    private static double Logit(double[] row, double[] b)
    {
        var sum = 0.0;
        for (var k = 0; k < row.Length; k++) sum += b[k] * row[k];
        return sum;
    }

    private static double[] Solved(double[,] curve, double[] gradient) =>
        MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfArray(curve).Cholesky()
            .Solve(MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(gradient)).ToArray();
}
