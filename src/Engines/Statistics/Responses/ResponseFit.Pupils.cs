namespace Slantwise.Engines.Statistics.Responses;

public sealed partial class ResponseFit
{
    /// <summary>A pupil's ability in a lesson, growth included, against the middle of the class in the first.</summary>
    /// <param name="pupil">An index into the pupils.</param>
    /// <param name="lesson">Which lesson, 0 or more; it may lie ahead.</param>
    /// <exception cref="ArgumentOutOfRangeException">A lesson below 0.</exception>
    public Estimate Ability(int pupil, int lesson)
    {
        var rows = RowsFor(lesson);
        return AnswerFor(pupil, lesson, rows, _posterior.OfPupil(pupil, lesson, [rows], _table.Own(pupil))[0], 0);
    }

    /// <summary>A pupil's chances at one level.</summary>
    /// <param name="pupil">An index into the pupils.</param>
    /// <param name="level">An index into the levels.</param>
    /// <param name="lesson">Which lesson, 0 or more; it may lie ahead.</param>
    /// <returns>None where the level has no difficulty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A lesson below 0.</exception>
    public SuccessChance? Chance(int pupil, int level, int lesson) => Chances(pupil, [level], lesson)[0];

    /// <summary>A pupil's chances at several levels, in one go.</summary>
    /// <param name="pupil">An index into the pupils.</param>
    /// <param name="levels">Indices into the levels, any order.</param>
    /// <param name="lesson">Which lesson, 0 or more; it may lie ahead.</param>
    /// <returns>One a level, in the order given; none where the level has no difficulty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A lesson below 0.</exception>
    public IReadOnlyList<SuccessChance?> Chances(int pupil, IReadOnlyList<int> levels, int lesson)
    {
        var rows = levels.Select(level =>
        {
            var row = RowsFor(lesson);
            row[level] = -1;
            return row;
        }).ToList();
        var mixtures = _posterior.OfPupil(pupil, lesson, rows, _table.Own(pupil));
        return [.. levels.Select((level, k) => _isUsed[level]
            ? new SuccessChance(mixtures[k], AnswerFor(pupil, lesson, rows[k], mixtures[k], Link(pupil, level)), TrialsOf(pupil, level))
            : null)];
    }

    private int TrialsOf(int pupil, int level)
    {
        var count = 0;
        foreach (var cell in _cells.Of(pupil)) if (cell.Level == level) count += cell.Trials;
        foreach (var trial in _cells.Timed(pupil)) if (trial.Level == level) count++;
        return count;
    }

    private ResponseCaution Link(int pupil, int level)
    {
        var (p, l) = (Connectedness.OfPupil(pupil), Connectedness.OfLevel(level));
        return (l is null ? ResponseCaution.NoTrials : 0) | (p is not null && l is not null && p != l ? ResponseCaution.Disconnected : 0);
    }

    /// <summary>The rows of a lesson.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A lesson below 0.</exception>
    private double[] RowsFor(int lesson)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(lesson);
        var rows = new double[_posterior.Design.Layout.RowCount];
        if (_posterior.Design.Layout.HasGrowth) rows[_posterior.Design.Layout.GrowthRow] = lesson;
        return rows;
    }

    private Estimate AnswerFor(int pupil, int lesson, double[] rows, LogitMixture mixture, ResponseCaution cautions)
    {
        var own = (double[])rows.Clone();
        for (var m = 0; m < _posterior.Design.Covariates[pupil].Length; m++)
            own[_posterior.Design.Layout.FirstCovariateRow + m] = _posterior.Design.Covariates[pupil][m];
        // What a lesson adds to a whole class is left out, as the levels' middle is: it would make any data look informative.
        if (_posterior.Design.Layout.HasGrowth) own[_posterior.Design.Layout.GrowthRow] = 0;
        var spread = _posterior.Points.Sum(p => p.Weight * p.Point.Scales.Ability * p.Point.Scales.Ability);
        var before = spread + lesson * _options.DriftSdLogits * _options.DriftSdLogits + (PriorVariance(_posterior.Design.ToBorder(own)) ?? 0);
        return Answer(mixture, before, cautions | (_trialsOfPupil[pupil] == 0 ? ResponseCaution.NoTrials : 0));
    }
}
