using Slantwise.Engines.Statistics.Responses.Border;
using Slantwise.Engines.Statistics.Responses.Numerics;
using Slantwise.Engines.Statistics.Responses.Pupils;
using Slantwise.Engines.Statistics.Responses.Spread;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>
/// The chance of success from who tries and what is tried: logit P = ability + growth · lesson − (task + slope · log dose + residual). Seconds on a
/// stopwatch follow the same curve, so that ticks and times speak about the same abilities.
/// </summary>
/// <remarks>Sources: [Rasch1960]; [DeBoeckWilson2004] for covariates with residuals (both from memory). What would mislead stands in docs/engines/response-model.md.</remarks>
public static class ResponseModel
{
    /// <summary>Fits the model.</summary>
    /// <param name="data">Pupils, levels, trials; any of them may be empty.</param>
    /// <param name="options">How; none for the usual way.</param>
    /// <param name="work">On how many threads, and whom to tell; none for one thread and nobody.</param>
    /// <returns>An answer in any case, with cautions where it leans on assumptions or did not reach its end.</returns>
    /// <exception cref="ArgumentException">An option outside its range.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static ResponseFit Fit(ResponseData data, ResponseOptions? options = null, ResponseWork? work = null) => Run(data, options ?? new(), work ?? new(), null);

    /// <summary>
    /// Fits again after a few more trials, in a lesson: from where the last fit ended, in two or three passes over the trials. Fit in full when the lesson is over.
    /// </summary>
    /// <param name="previous">A fit, or another refit, of nearly the same trials, with the same pupils and levels.</param>
    /// <param name="data">All trials so far, not only the new ones. With other pupils or levels it begins anew, and takes as long as a fit without the grid.</param>
    /// <param name="work">On how many threads; none for one.</param>
    /// <returns>
    /// Border and spreads at their peak, as <see cref="Fit"/> would find them with the same options and no grid, within two hundredths of a standard error, and after a lesson of refits in a row within a twentieth. Against a full fit of a
    /// small class, which averages over pairs of spreads, means may lie a fifth of a standard deviation off and deviations come out up to a fifth too small, or a
    /// twentieth too large, most for levels that were hardly tried. The levels are not read a second time: <see cref="ResponseFit.Choice"/> is the previous one's.
    /// </returns>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static ResponseFit Refit(ResponseFit previous, ResponseData data, ResponseWork? work = null) => Run(data, previous.Options, (work ?? new()) with { Near = previous }, previous);

    private static ResponseFit Run(ResponseData data, ResponseOptions options, ResponseWork work, ResponseFit? previous)
    {
        options.Check();
        var told = 0.0;
        void Tell(double done) => work.Progress?.Report(new(told = Math.Max(told, done)));

        var hasGrowth = options.HasGrowth && data.Cells.HasLessons;
        var isUsed = UsedLevels(data, options);
        var table = TermTable.Of(data, options, hasGrowth || options.DriftSdLogits > 0, isUsed, work.ThreadCount);
        var design = BorderDesign.Of(data, options, hasGrowth, table.Shape.IsUsed, j => isUsed[j], hasSpread: !options.IsFlat);
        var rule = GaussHermite.Of(options.NodeCount);
        IAbilityKernel Kernel() => table.StateCount > 0
            ? new WanderingPupil(table, design.Layout, design.Covariates, rule, options.DriftSdLogits)
            : new StillPupil(table, design.Layout, design.Covariates, rule, options.DriftSdLogits);

        var search = new BorderSearch(table, design, options, new(table, design.Layout, work, Kernel));
        var scales = new ScaleSearch(search, options, d => Tell(0.4 * d));
        // Without assumptions there is no determinant to mind, and the simpler search is exact; it also gives standard errors that know about the spread.
        var peak = options.IsFlat
            ? scales.Find()
            : new NestedSearch(table, design, options, work, scales.Axes, Kernel).Find(search, work.Near?.PeakFor(design, scales.Axes.Length), previous is not null, d => Tell(0.4 * d));
        // Where the quick search goes astray, mostly where nothing is assumed of a spread, the patient one has the last word.
        if (peak.HasConverged || options.IsFlat) scales.BeginAt(peak);
        else peak = scales.Find() with { Rounds = peak.Rounds };
        var isGrid = !options.IsFlat && previous is null && data.Pupils.Count <= options.GridPupilCount;
        var points = isGrid ? ScaleGrid.Of(scales, peak, d => Tell(0.4 + 0.5 * d)) : [new(peak.Point, 1)];
        var choice = previous is not null ? previous.Choice : !options.IsFlat && data.Trials.Count > 0 && data.Pupils.Count <= options.ChoicePupilCount
            ? ChoiceCheck.Of(data, options, work, design, peak.Point) : [];
        Tell(1);
        return new(data, options, table, isUsed, scales.Axes, options.IsFlat ? scales.Rounds : peak.Rounds + scales.Rounds, new(design, peak, points, isGrid, Kernel), choice);
    }

    /// <summary>Without assumptions a level that was never tried, always managed or always missed has no finite difficulty; in the limit its trials say nothing about others.</summary>
    private static bool[] UsedLevels(ResponseData data, ResponseOptions options)
    {
        if (!options.IsFlat) return [.. data.Levels.Select(_ => true)];
        var (managed, missed) = (new bool[data.Levels.Count], new bool[data.Levels.Count]);
        foreach (var t in data.Trials)
        {
            managed[t.Level] |= t.Successes > 0;
            missed[t.Level] |= t.Successes < t.Trials;
        }
        return [.. managed.Select((m, j) => m && missed[j])];
    }
}
