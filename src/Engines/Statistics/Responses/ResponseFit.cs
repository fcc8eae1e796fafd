using Slantwise.Engines.Statistics.Responses.Border;
using Slantwise.Engines.Statistics.Responses.Pupils;
using Slantwise.Engines.Statistics.Responses.Spread;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>What a fit found. Everything here may be asked from several threads; each answer is computed when asked.</summary>
public sealed partial class ResponseFit
{
    private readonly ResponseOptions _options;
    private readonly TermTable _table;
    private readonly bool[] _isUsed;
    private readonly Posterior _posterior;
    private readonly TrialCells _cells;
    private readonly int[] _trialsOfLevel, _trialsOfPupil;

    internal ResponseFit(ResponseData data, ResponseOptions options, TermTable table, bool[] isUsed, ScaleAxis[] axes, int rounds, Posterior posterior, IReadOnlyList<ChoiceComparison> choice)
    {
        (_options, _table, _isUsed, _posterior) = (options, table, isUsed, posterior);
        var peak = posterior.Peak;
        (_trialsOfLevel, _trialsOfPupil) = (new int[data.Levels.Count], new int[data.Pupils.Count]);
        for (var i = 0; i < data.Pupils.Count; i++)
        {
            foreach (var cell in data.Cells.Of(i)) Count(i, cell.Level, cell.Lesson, cell.Trials);
            foreach (var trial in data.Cells.Timed(i)) Count(i, trial.Level, trial.Lesson, 1);
        }
        _cells = data.Cells;
        Connectedness = Connectedness.Of(data);
        FalseStarts = Responses.FalseStarts.Of(data, options);
        TimesLeftAsideCount = table.TimesLeftAside;
        AbilitySpread = Spread(axes, true, peak.Point.Scales.Ability);
        ResidualSpread = options.IsFlat ? null : Spread(axes, false, peak.Point.Scales.Residual);
        EvidenceNats = options.IsFlat ? null : peak.Value;
        LogLikelihoodNats = peak.Point.LogLikelihood;
        RoundCount = rounds;
        DistanceSd = peak.Point.DistanceSd;
        Choice = choice;
        Cautions = (peak.HasConverged ? 0 : ResponseCaution.NotConverged)
            | (peak.IsAtEdge ? ResponseCaution.SpreadAtEdge : 0)
            | (Connectedness.GroupCount > 1 ? ResponseCaution.Disconnected : 0)
            | (Connectedness.IsTwoSided ? 0 : ResponseCaution.OneSided)
            | (choice.Any(c => c.IsFar) ? ResponseCaution.ChoiceMattered : 0)
            | (table.TimesLeftAside > 0 ? ResponseCaution.TimesLeftAside : 0)
            | (data.Trials.Count == 0 ? ResponseCaution.NoTrials : 0);
    }

    internal ResponseOptions Options => _options;

    /// <summary>What to mind about the whole.</summary>
    public ResponseCaution Cautions { get; }

    /// <summary>The last lesson with a trial; 0 without any.</summary>
    public int LastLesson { get; private set; }

    /// <summary>How abilities are spread.</summary>
    public ScaleEstimate AbilitySpread { get; }

    /// <summary>How levels are spread beyond order and dose; none where each level stands for itself.</summary>
    public ScaleEstimate? ResidualSpread { get; }

    /// <summary>The logarithm of how well model and assumptions together foretold the data, at the likeliest spreads; none where nothing is assumed.</summary>
    public double? EvidenceNats { get; }

    /// <summary>The log-likelihood at the likeliest border and spreads, abilities integrated out.</summary>
    public double LogLikelihoodNats { get; }

    /// <summary>Passes over the trials.</summary>
    public int RoundCount { get; }

    /// <summary>How far the last search still was from its end, in standard errors.</summary>
    public double DistanceSd { get; }

    /// <summary>The levels read in two ways; empty where nothing is assumed, for very many pupils, or where it was not asked for.</summary>
    public IReadOnlyList<ChoiceComparison> Choice { get; }

    /// <summary>Stopwatch times that contradict their tick and were left aside.</summary>
    public int TimesLeftAsideCount { get; }

    /// <summary>Which pupils and levels are linked by trials.</summary>
    public Connectedness Connectedness { get; }

    /// <summary>By level: timed failures in the first moment.</summary>
    public IReadOnlyList<FalseStarts> FalseStarts { get; }

    /// <summary>The coefficients, in the order of their kinds.</summary>
    public IReadOnlyList<CoefficientEstimate> Coefficients => [.. _posterior.Design.Columns.Select((c, k) =>
    {
        var slopes = new double[_posterior.Design.Size];
        slopes[k] = 1;
        return new CoefficientEstimate(c.Kind, c.Index, Answer(_posterior.OfBorder(slopes), _options.IsFlat ? null : c.Prior.SdLogits * c.Prior.SdLogits
            + (c.Kind == CoefficientKind.DoseSlope ? _options.Priors.OwnSlopeSdLogits * _options.Priors.OwnSlopeSdLogits : 0), 0));
    })];

    /// <summary>A level's difficulty: the ability at which it succeeds every other time.</summary>
    /// <param name="level">An index into the levels.</param>
    /// <returns>None where nothing is assumed and the level was never tried, always managed or always missed.</returns>
    public Estimate? Difficulty(int level)
    {
        if (!_isUsed[level]) return null;
        var slopes = SlopesOf(level, 1);
        return Answer(_posterior.OfBorder(slopes), PriorVariance(slopes), _trialsOfLevel[level] == 0 ? ResponseCaution.NoTrials : 0);
    }

    /// <summary>How much harder one level is than another.</summary>
    /// <param name="harder">An index into the levels.</param>
    /// <param name="easier">Another.</param>
    /// <returns>None where either has no difficulty.</returns>
    public Estimate? Contrast(int harder, int easier)
    {
        if (!_isUsed[harder] || !_isUsed[easier]) return null;
        var slopes = SlopesOf(harder, 1);
        var other = SlopesOf(easier, -1);
        for (var k = 0; k < slopes.Length; k++) slopes[k] += other[k];
        var (a, b) = (Connectedness.OfLevel(harder), Connectedness.OfLevel(easier));
        return Answer(_posterior.OfBorder(slopes), PriorVariance(slopes), (a is null || b is null ? ResponseCaution.NoTrials : 0) | (a != b && a is not null && b is not null ? ResponseCaution.Disconnected : 0));
    }

    /// <summary>The peak, where a new fit has the same pupils, levels and coefficients.</summary>
    internal ScalePeak? PeakFor(BorderDesign design, int axes)
    {
        var own = _posterior.Design;
        var isSame = own.Layout == design.Layout && own.Covariates.Length == design.Covariates.Length && _posterior.Peak.Logs.Length == axes
            && own.Columns.Select(c => (c.Kind, c.Index)).SequenceEqual(design.Columns.Select(c => (c.Kind, c.Index)));
        return isSame ? _posterior.Peak : null;
    }

    private void Count(int pupil, int level, int lesson, int trials)
    {
        _trialsOfLevel[level] += trials;
        _trialsOfPupil[pupil] += trials;
        LastLesson = Math.Max(LastLesson, lesson);
    }

    private ScaleEstimate Spread(ScaleAxis[] axes, bool isAbility, double fixedSd)
    {
        var peak = _posterior.Peak;
        var a = Array.FindIndex(axes, x => x.IsAbility == isAbility);
        if (a < 0) return new(fixedSd, 0);
        if (_posterior.Points.Count == 1) return new(Math.Exp(peak.Logs[a]), Math.Sqrt(peak.Covariance[a, a]));
        double Log(WeightedPoint p) => Math.Log(isAbility ? p.Point.Scales.Ability : p.Point.Scales.Residual);
        var mean = _posterior.Points.Sum(p => p.Weight * Log(p));
        return new(Math.Exp(mean), Math.Sqrt(_posterior.Points.Sum(p => p.Weight * (Log(p) - mean) * (Log(p) - mean))));
    }

    private double[] SlopesOf(int level, double by)
    {
        var rows = new double[_posterior.Design.Layout.RowCount];
        rows[level] = by;
        return _posterior.Design.ToBorder(rows);
    }

    /// <summary>Variance beforehand, the levels' common middle taken as known: doubt about that alone must not make data look informative. None where nothing is assumed.</summary>
    private double? PriorVariance(double[] slopes)
    {
        if (_options.IsFlat) return null;
        var own = (double[])slopes.Clone();
        for (var c = 0; c < _posterior.Design.Columns.Count; c++)
            if (_posterior.Design.Columns[c].Kind == CoefficientKind.Middle) own[c] = 0;
        return _posterior.Points.Sum(p => p.Weight * _posterior.Design.Prior.Variance(own, p.Point.Scales.Residual));
    }

    private Estimate Answer(LogitMixture mixture, double? priorVariance, ResponseCaution cautions)
    {
        var variance = mixture.Variance;
        var share = priorVariance is not { } before ? 1 : before > 0 ? Math.Clamp(1 - variance / before, 0, 1) : 0;
        return new(mixture.Mean, Math.Sqrt(variance), share,
            cautions | (share < 0.5 ? ResponseCaution.MostlyAssumption : 0) | (Cautions & (ResponseCaution.NotConverged | ResponseCaution.SpreadAtEdge)));
    }
}
