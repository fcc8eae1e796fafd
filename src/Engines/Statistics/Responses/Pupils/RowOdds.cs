namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>The odds that rows give a term before any ability is known, with an exponential for each level and lesson instead of each term.</summary>
internal sealed class RowOdds(RowLayout layout, int mostLesson)
{
    /// <summary>exp(±345) squared is still a number; a logistic has long been 0 or 1 by then.</summary>
    public const double Far = 345;

    private readonly double[] _levels = new double[layout.Levels], _lessons = new double[layout.HasGrowth ? mostLesson + 1 : 1];
    private double[] _rows = [];
    private double _growth, _shape;
    private bool _areNear;

    /// <summary>Makes ready for these rows; nothing where they are the last ones.</summary>
    public void Take(double[] rows)
    {
        if (ReferenceEquals(rows, _rows)) return;
        _rows = rows;
        (_growth, _shape) = (layout.HasGrowth ? rows[layout.GrowthRow] : 0, layout.HasShape ? rows[layout.ShapeRow] : 0);
        var most = 0.0;
        for (var j = 0; j < _levels.Length; j++)
        {
            _levels[j] = Math.Exp(Math.Clamp(-rows[j], -Far, Far));
            most = Math.Max(most, Math.Abs(rows[j]));
        }
        for (var l = 0; l < _lessons.Length; l++) _lessons[l] = Math.Exp(Math.Clamp(_growth * l, -Far, Far));
        // Products are right only where none of their factors was cut off.
        _areNear = most + Math.Abs(_growth) * mostLesson < Far / 2;
    }

    /// <summary>What a pupil's covariates add, and its odds.</summary>
    public (double Logit, double Odds) Shift(double[] covariates)
    {
        if (covariates.Length == 0) return (0, 1);
        var shift = 0.0;
        for (var m = 0; m < covariates.Length; m++) shift += covariates[m] * _rows[layout.FirstCovariateRow + m];
        return (shift, Math.Exp(Math.Clamp(shift, -Far, Far)));
    }

    /// <summary>The logit of a term without its τ, and the odds with it.</summary>
    public (double Logit, double Odds) Of(int level, int lesson, double tau, double shift, double shiftOdds)
    {
        var logit = shift + _growth * lesson - _rows[level];
        return (logit, tau == 0 && _areNear && Math.Abs(shift) < Far / 2
            ? _levels[level] * _lessons[layout.HasGrowth ? lesson : 0] * shiftOdds
            : Math.Exp(Math.Clamp(logit + _shape * tau, -Far, Far)));
    }
}
