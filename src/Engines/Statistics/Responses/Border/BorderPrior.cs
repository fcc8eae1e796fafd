using Slantwise.Engines.Statistics.Responses.Numerics;

namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>
/// What is assumed about coefficients and residuals: normal; slopes of doses lean on a common one; residuals of one task lean on each other.
/// </summary>
internal sealed class BorderPrior
{
    private readonly int _columns, _levels;
    private readonly double[] _precision;
    private readonly double _logDeterminant, _share;
    private readonly int[] _task, _taskSize, _unused;
    private readonly bool _isFlat, _isCentred;

    public BorderPrior(BorderDesign design, IReadOnlyList<ResponseLevel> levels, ResponseOptions options, Func<int, bool> isUsed, bool isCentred)
    {
        (_columns, _levels, _isFlat, _isCentred, _share) = (design.Columns.Count, levels.Count, options.IsFlat, isCentred, options.Priors.TaskShareFraction);
        Covariance = new double[_columns * _columns];
        Mean = new double[_columns + _levels];
        for (var c = 0; c < _columns; c++)
        {
            var (kind, _, prior, _) = design.Columns[c];
            Mean[c] = prior.MeanLogits;
            for (var d = 0; d < _columns; d++)
            {
                if (kind == CoefficientKind.DoseSlope && design.Columns[d].Kind == kind) Covariance[c * _columns + d] = prior.SdLogits * prior.SdLogits;
                if (c == d) Covariance[c * _columns + d] = prior.SdLogits * prior.SdLogits + (kind == CoefficientKind.DoseSlope ? options.Priors.OwnSlopeSdLogits * options.Priors.OwnSlopeSdLogits : 0);
            }
        }
        var factor = Cholesky.Of(Covariance, _columns) ?? throw new ArgumentException("Priors need a spread above 0.", nameof(options));
        _precision = _isFlat ? new double[_columns * _columns] : factor.Inverse();
        _logDeterminant = -factor.LogDeterminant;
        _unused = [.. Enumerable.Range(0, _levels).Where(j => !isUsed(j))];
        _task = [.. levels.Select(l => l.Task)];
        _taskSize = [.. levels.Select(l => levels.Count(o => o.Task == l.Task))];
    }

    public double[] Mean { get; }

    /// <summary>Covariance of the coefficients.</summary>
    public double[] Covariance { get; }

    /// <summary>The log density and its derivative by the logarithm of the residuals' spread; the gradient is added to one and the precision to another.</summary>
    public (double LogDensity, double SpreadSlope) AddTo(ReadOnlySpan<double> border, double residualSd, Span<double> gradient, Span<double> information)
    {
        int size = _columns + _levels;
        if (_isFlat)
        {
            // A level without use stands at 0 and touches nothing; without this it would have no place at all.
            foreach (var j in _unused) information[(_columns + j) * (size + 1)] += 1;
            if (_isCentred) Centre(border, gradient, information);
            return (0, 0);
        }
        double form = 0, logDeterminant = _logDeterminant;
        for (var c = 0; c < _columns; c++)
        {
            for (var d = 0; d < _columns; d++)
            {
                var pull = _precision[c * _columns + d] * (border[d] - Mean[d]);
                form += pull * (border[c] - Mean[c]);
                gradient[c] -= pull;
                information[c * size + d] += _precision[c * _columns + d];
            }
        }
        // Residuals of a task with m levels have covariance ω²((1 − ρ)I + ρ11ᵀ); its inverse and determinant are known in closed form.
        var residualForm = 0.0;
        var own = 1 / ((1 - _share) * residualSd * residualSd);
        for (var j = 0; j < _levels; j++)
        {
            var common = own * _share / (1 - _share + _share * _taskSize[j]);
            logDeterminant += Math.Log(own) + Math.Log((1 - _share) / (1 - _share + _share * _taskSize[j])) / _taskSize[j];
            for (var k = 0; k < _levels; k++)
            {
                if (_task[k] != _task[j]) continue;
                var precision = (j == k ? own : 0) - common;
                var pull = precision * border[_columns + k];
                residualForm += pull * border[_columns + j];
                gradient[_columns + j] -= pull;
                information[(_columns + j) * size + _columns + k] += precision;
            }
        }
        return ((logDeterminant - form - residualForm - size * Math.Log(2 * Math.PI)) / 2, residualForm - _levels);
    }

    /// <summary>What centring adds to the variance of each used level, and to the covariance of each two.</summary>
    public double CentringVariance => _isCentred && _isFlat ? 1 / Math.Pow(_levels - _unused.Length, 2) : 0;

    /// <summary>Where only differences of levels matter, their sum is held at 0: a pull on it alone changes no difference.</summary>
    private void Centre(ReadOnlySpan<double> border, Span<double> gradient, Span<double> information)
    {
        int size = _columns + _levels;
        var used = Enumerable.Range(0, _levels).Except(_unused).Select(j => _columns + j).ToArray();
        var sum = 0.0;
        foreach (var j in used) sum += border[j];
        foreach (var j in used)
        {
            gradient[j] -= sum;
            foreach (var k in used) information[j * size + k] += 1;
        }
    }

    /// <summary>Inverse covariance of residuals beforehand, level by level.</summary>
    public double[] ResidualPrecision(double residualSd)
    {
        int size = _columns + _levels;
        var (gradient, information) = (new double[size], new double[size * size]);
        AddTo(Mean, residualSd, gradient, information);
        var own = new double[_levels * _levels];
        for (var j = 0; j < _levels; j++) information.AsSpan((_columns + j) * size + _columns, _levels).CopyTo(own.AsSpan(j * _levels));
        return own;
    }

    /// <summary>Variance beforehand of a sum of coefficients and residuals.</summary>
    public double Variance(ReadOnlySpan<double> slopes, double residualSd)
    {
        var variance = 0.0;
        for (var c = 0; c < _columns; c++)
            for (var d = 0; d < _columns; d++) variance += slopes[c] * slopes[d] * Covariance[c * _columns + d];
        for (var j = 0; j < _levels; j++)
        {
            if (slopes[_columns + j] == 0) continue;
            for (var k = 0; k < _levels; k++)
            {
                if (_task[k] == _task[j])
                    variance += slopes[_columns + j] * slopes[_columns + k] * residualSd * residualSd * (j == k ? 1 : _share);
            }
        }
        return variance;
    }
}
