using MathNet.Numerics.LinearAlgebra;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>
/// The model a second time, as plainly as it can be written: probabilities from their definition, abilities integrated on a fine grid, derivatives
/// by differences. For tiny classes with given spreads.
/// </summary>
internal sealed class PlainModel
{
    private const int GridCount = 141;

    private readonly ResponseData _data;
    private readonly ResponseOptions _options;
    private readonly List<(string Name, NormalPrior Prior, Func<double[], ResponseTrial, double> Part)> _coefficients = [];
    private readonly bool _hasTimes;

    public PlainModel(ResponseData data, ResponseOptions options)
    {
        (_data, _options) = (data, options);
        var priors = options.Priors;
        _hasTimes = data.Trials.Any(t => t is { HeldS: { } held, Successes: 0 } && held >= options.FirstMomentS && held < Dose(t));
        _coefficients.Add(("Middle", priors.Middle, (b, _) => -b[0]));
        foreach (var measure in data.Levels.Where(l => l.Dose is not null).Select(l => l.Dose!.Value.Measure).Distinct().Order())
        {
            if (data.Levels.Where(l => l.Dose?.Measure == measure).Distinct().Count() < 2 && !(_hasTimes && measure == DoseMeasure.Hold)) continue;
            var k = _coefficients.Count;
            if (measure == DoseMeasure.Hold) SlopePlace = k;
            _coefficients.Add(($"DoseSlope {(int)measure}", priors.DoseSlope, (b, t) => data.Levels[t.Level].Dose is { } d && d.Measure == measure ? -b[k] * d.HardnessLogits : 0));
        }
        if (data.Levels.Any(l => l.OrderLogits is not null)) Add("Order", priors.Order, t => -(data.Levels[t.Level].OrderLogits ?? 0));
        if (data.Trials.Select(t => t.Lesson).Distinct().Count() > 1) Add("Growth", priors.Growth, t => t.Lesson);
        if (data.Pupils.Any(p => p.Prediction is not null))
        {
            var implied = data.Pupils.Select(p => p.Prediction is { } q ? Implied(q) : (double?)null).ToArray();
            var centre = implied.Average();
            Add("Prediction", priors.Prediction, t => implied[t.Pupil] - centre ?? 0);
            if (implied.Contains(null)) Add("NoPrediction", priors.PupilCovariate, t => implied[t.Pupil] is null ? 1 : 0);
        }
    }

    public int SlopePlace { get; } = -1;

    public IEnumerable<string> Names => _coefficients.Select(c => c.Name);

    public int Size => _coefficients.Count + _data.Levels.Count;

    public double LogJoint(double[] border)
    {
        var sum = LogPrior(border);
        for (var i = 0; i < _data.Pupils.Count; i++) sum += LogIntegral(i, border);
        return sum;
    }

    /// <summary>Minus the second derivatives of the log joint, by central differences.</summary>
    public Matrix<double> Information(double[] at, double h = 1e-3)
    {
        double Moved(int a, double x, int b, double y)
        {
            double[] moved = [.. at];
            moved[a] += x;
            moved[b] += y;
            return LogJoint(moved);
        }
        return Matrix<double>.Build.Dense(Size, Size, (a, b) => b > a ? 0
            : -(Moved(a, h, b, h) - Moved(a, h, b, -h) - Moved(a, -h, b, h) + Moved(a, -h, b, -h)) / (4 * h * h)) is var lower
            ? Matrix<double>.Build.Dense(Size, Size, (a, b) => lower[Math.Max(a, b), Math.Min(a, b)]) : throw new InvalidOperationException();
    }

    public double[] Gradient(double[] at, double h = 1e-4) => [.. Enumerable.Range(0, Size).Select(k =>
    {
        double[] up = [.. at], down = [.. at];
        up[k] += h;
        down[k] -= h;
        return (LogJoint(up) - LogJoint(down)) / (2 * h);
    })];

    private void Add(string name, NormalPrior prior, Func<ResponseTrial, double> value)
    {
        var k = _coefficients.Count;
        _coefficients.Add((name, prior, (b, t) => b[k] * value(t)));
    }

    private double Implied(FirstPrediction prediction)
    {
        var level = _data.Levels[prediction.Level];
        var chance = Math.Min(0.95, Math.Max(0.05, prediction.ChanceFraction));
        return Math.Log(chance / (1 - chance)) + _options.Priors.DoseSlope.MeanLogits * (level.Dose?.HardnessLogits ?? 0) + _options.Priors.Order.MeanLogits * (level.OrderLogits ?? 0);
    }

    private double Dose(ResponseTrial trial) => 5 * Math.Exp(_data.Levels[trial.Level].Dose!.Value.HardnessLogits);

    private double LogPrior(double[] border)
    {
        var size = Size;
        var (covariance, mean) = (Matrix<double>.Build.Dense(size, size), Vector<double>.Build.Dense(size));
        var n = _coefficients.Count;
        for (var a = 0; a < size; a++)
        {
            for (var b = 0; b < size; b++)
            {
                if (a < n && b < n)
                {
                    bool slopes = _coefficients[a].Name.StartsWith("DoseSlope") && _coefficients[b].Name.StartsWith("DoseSlope");
                    if (a == b || slopes) covariance[a, b] = Math.Pow(_coefficients[a].Prior.SdLogits, 2);
                    if (a == b && slopes) covariance[a, b] += Math.Pow(_options.Priors.OwnSlopeSdLogits, 2);
                    mean[a] = _coefficients[a].Prior.MeanLogits;
                }
                else if (a >= n && b >= n)
                {
                    var shared = _data.Levels[a - n].Task == _data.Levels[b - n].Task ? _options.Priors.TaskShareFraction : 0;
                    covariance[a, b] = Math.Pow(_options.ResidualSdLogits!.Value, 2) * (a == b ? 1 : shared);
                }
            }
        }
        // What is assumed about the slope of timed holds vanishes at 0.
        var avoidsZero = _hasTimes ? Math.Log(border[SlopePlace]) : 0;
        var off = Vector<double>.Build.Dense(border) - mean;
        return avoidsZero - 0.5 * (off * covariance.Inverse() * off) - 0.5 * Math.Log(covariance.Determinant()) - size / 2.0 * Math.Log(2 * Math.PI);
    }

    /// <summary>Mean and standard deviation of a pupil's own part of ability in a lesson, the border known.</summary>
    public (double Mean, double Sd) Ability(int pupil, int lesson, double[] border)
    {
        var last = Math.Max(lesson, _data.Trials.Max(t => t.Lesson));
        var (grid, step) = Grid(last);
        var mass = Start(grid, step);
        for (var l = 0; l <= lesson; l++) mass = Through(mass, grid, step, pupil, l, border, l < lesson);
        var after = grid.Select(_ => 1.0).ToArray();
        for (var l = last; l > lesson; l--)
        {
            after = Through(after, grid, step, pupil, l, border, false);
            if (_options.DriftSdLogits > 0) after = Stepped(after, grid, step);
        }
        var sum = mass.Zip(after, (m, a) => m * a).Sum();
        var mean = grid.Select((x, g) => x * mass[g] * after[g]).Sum() / sum;
        return (mean, Math.Sqrt(grid.Select((x, g) => (x - mean) * (x - mean) * mass[g] * after[g]).Sum() / sum));
    }

    /// <summary>A pupil's likelihood: forwards through the lessons over a grid of abilities, each lesson a step of the walk.</summary>
    private double LogIntegral(int pupil, double[] border)
    {
        var last = _data.Trials.Max(t => t.Lesson);
        var (grid, step) = Grid(last);
        var mass = Start(grid, step);
        for (var lesson = 0; lesson <= last; lesson++) mass = Through(mass, grid, step, pupil, lesson, border, lesson < last);
        return Math.Log(mass.Sum());
    }

    private (double[] Points, double Step) Grid(int lessons)
    {
        var reach = 7 * Math.Sqrt(Math.Pow(_options.AbilitySdLogits!.Value, 2) + lessons * Math.Pow(_options.DriftSdLogits, 2));
        var step = 2 * reach / (GridCount - 1);
        return ([.. Enumerable.Range(0, GridCount).Select(g => -reach + g * step)], step);
    }

    private double[] Start(double[] grid, double step) => [.. grid.Select(x => Density(x, _options.AbilitySdLogits!.Value) * step)];

    private double[] Through(double[] mass, double[] grid, double step, int pupil, int lesson, double[] border, bool hasNext)
    {
        double[] seen = [.. mass];
        foreach (var trial in _data.Trials.Where(t => t.Pupil == pupil && t.Lesson == lesson))
            for (var g = 0; g < seen.Length; g++) seen[g] *= Likelihood(trial, grid[g], border);
        return hasNext && _options.DriftSdLogits > 0 ? Stepped(seen, grid, step) : seen;
    }

    private double[] Stepped(double[] mass, double[] grid, double step)
    {
        var reached = new double[mass.Length];
        for (var a = 0; a < reached.Length; a++)
            for (var b = 0; b < reached.Length; b++) reached[a] += mass[b] * Density(grid[a] - grid[b], _options.DriftSdLogits) * step;
        return reached;
    }

    private double Likelihood(ResponseTrial trial, double ability, double[] border)
    {
        var eta = ability - border[_coefficients.Count + trial.Level];
        foreach (var (_, _, part) in _coefficients) eta += part(border, trial);
        double Held(double seconds) => 1 / (1 + Math.Exp(-(eta + border[SlopePlace] * Math.Log(Dose(trial) / seconds))));
        var success = 1 / (1 + Math.Exp(-eta));
        if (trial is { HeldS: { } held, Successes: 0 } && held >= _options.FirstMomentS && held < Dose(trial))
        {
            var low = Math.Max(held - _options.StopwatchStepS / 2, _options.FirstMomentS);
            var high = Math.Min(held + _options.StopwatchStepS / 2, Dose(trial));
            return _options.FirstMomentS > 0
                ? (1 - success) * (Held(low) - Held(high)) / (Held(_options.FirstMomentS) - success)
                : (low > 0 ? Held(low) : 1) - Held(high);
        }
        return Math.Pow(success, trial.Successes) * Math.Pow(1 - success, trial.Trials - trial.Successes);
    }

    private static double Density(double x, double sd) => Math.Exp(-x * x / (2 * sd * sd)) / (sd * Math.Sqrt(2 * Math.PI));
}
