namespace Slantwise.Engines.Statistics.Responses.Numerics;

/// <summary>A symmetric positive definite matrix as L·Lᵀ, row by row in one array.</summary>
internal sealed class Cholesky
{
    private readonly double[] _l;
    private readonly int _n;

    private Cholesky(double[] l, int n) => (_l, _n) = (l, n);

    public double LogDeterminant
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < _n; i++) sum += Math.Log(_l[i * _n + i]);
            return 2 * sum;
        }
    }

    /// <summary>None where the matrix is not positive definite. Only the lower triangle is read.</summary>
    public static Cholesky? Of(ReadOnlySpan<double> matrix, int n)
    {
        var l = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var rest = matrix[i * n + j] - Dot(l.AsSpan(i * n, j), l.AsSpan(j * n, j));
                if (i != j) l[i * n + j] = rest / l[j * n + j];
                else if (rest > 1e-13 * Math.Abs(matrix[i * n + i]) && double.IsFinite(rest)) l[i * n + i] = Math.Sqrt(rest);
                else return null;
            }
        }
        return new(l, n);
    }

    public double[] Solve(ReadOnlySpan<double> right)
    {
        var x = right.ToArray();
        Forward(x);
        for (var i = _n - 1; i >= 0; i--)
        {
            x[i] /= _l[i * _n + i];
            for (var j = 0; j < i; j++) x[j] -= _l[i * _n + j] * x[i];
        }
        return x;
    }

    /// <summary>xᵀ·A⁻¹·x.</summary>
    public double InverseForm(ReadOnlySpan<double> right)
    {
        var x = right.ToArray();
        Forward(x);
        return Dot(x, x);
    }

    public double[] Inverse()
    {
        var inverse = new double[_n * _n];
        var unit = new double[_n];
        for (var i = 0; i < _n; i++)
        {
            unit[i] = 1;
            Solve(unit).CopyTo(inverse, i * _n);
            unit[i] = 0;
        }
        return inverse;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        for (var k = 0; k < a.Length; k++) sum += a[k] * b[k];
        return sum;
    }

    private void Forward(double[] x)
    {
        for (var i = 0; i < _n; i++) x[i] = (x[i] - Dot(_l.AsSpan(i * _n, i), x.AsSpan(0, i))) / _l[i * _n + i];
    }
}
