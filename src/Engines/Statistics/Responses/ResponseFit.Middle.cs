namespace Slantwise.Engines.Statistics.Responses;

public sealed partial class ResponseFit
{
    /// <summary>The chances at a level in the middle of the class: of no pupil, so that levels can be compared without comparing pupils.</summary>
    /// <param name="level">An index into the levels.</param>
    /// <param name="lesson">Which lesson, 0 or more; it may lie ahead.</param>
    /// <returns>None where the level has no difficulty. Its trials are all of the level.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A lesson below 0.</exception>
    /// <remarks>The middle is where pupils stand on average before their own trials, growth and what was known beforehand included; how far they spread around it is left out.</remarks>
    public SuccessChance? MiddleChance(int level, int lesson)
    {
        if (!_isUsed[level]) return null;
        var rows = RowsFor(lesson);
        rows[level] = -1;
        var known = _posterior.Design.Covariates;
        for (var m = 0; known.Length > 0 && m < known[0].Length; m++)
            rows[_posterior.Design.Layout.FirstCovariateRow + m] = known.Average(pupil => pupil[m]);
        var mixture = _posterior.OfBorder(_posterior.Design.ToBorder(rows));
        // How much was seen is asked of the level alone: what a lesson adds lies ahead of all data and widens the range instead.
        if (_posterior.Design.Layout.HasGrowth) rows[_posterior.Design.Layout.GrowthRow] = 0;
        var own = _posterior.Design.ToBorder(rows);
        var seen = Answer(_posterior.OfBorder(own), PriorVariance(own), _trialsOfLevel[level] == 0 ? ResponseCaution.NoTrials : 0);
        return new SuccessChance(mixture, seen with { MeanLogits = mixture.Mean, SdLogits = Math.Sqrt(mixture.Variance) }, _trialsOfLevel[level]);
    }
}
