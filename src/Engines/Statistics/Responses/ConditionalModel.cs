using Slantwise.Engines.Statistics.Responses.Border;
using Slantwise.Engines.Statistics.Responses.Pupils;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses;

/// <summary>
/// The same levels, read without any assumption about abilities: each pupil's total is taken as given, and only which trials succeeded counts. It
/// stays right where pupils choose by what they privately know, and goes wrong where they choose by how the last trial went: the opposite of
/// <see cref="ResponseModel"/>, so that the two together show whether choice mattered.
/// </summary>
/// <remarks>Sources: [Andersen1972]; [ZwitserMaris2015] for designs that adapt (both from memory). Times count as their ticks.</remarks>
public static class ConditionalModel
{
    /// <summary>Fits the levels.</summary>
    /// <param name="data">Pupils, levels, trials; any of them may be empty.</param>
    /// <param name="options">How; the residuals' spread is not estimated here, and is its prior median where it is not given.</param>
    /// <param name="work">On how many threads; none for one.</param>
    /// <exception cref="ArgumentException">An option outside its range.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static ConditionalFit Fit(ResponseData data, ResponseOptions? options = null, ResponseWork? work = null)
    {
        options = (options ?? new()) with { DriftSdLogits = 0 };
        options.Check();
        var ticks = data.Cells.AllTimed.Length == 0 ? data : new ResponseData(data.Pupils, data.Levels, [.. data.Trials.Select(t => t with { HeldS = null })]);
        var hasGrowth = options.HasGrowth && data.Cells.HasLessons;
        var isTried = new bool[data.Levels.Count];
        foreach (var trial in data.Trials) isTried[trial.Level] = true;
        bool[] isUsed = [.. isTried.Select(t => t || !options.IsFlat)];

        var table = TermTable.Of(ticks, options, hasGrowth, isUsed, work?.ThreadCount ?? 1);
        var design = BorderDesign.Of(ticks, options, hasGrowth, false, j => isUsed[j], true);
        var links = Connectedness.Of(ticks);
        // Without assumptions a fit exists only where every level is linked with every other in both directions.
        if (options.IsFlat && !links.IsTwoSided) return new(data, design, null, isTried);
        var search = new BorderSearch(table, design, options, new(table, design.Layout, work ?? new(), () => new ConditionalPupil(table, design.Layout)));
        var residual = options.ResidualSdLogits ?? options.Priors.Residual?.MedianLogits ?? 0.5;
        return new(data, design, search.At(new(1, residual), search.Start, null), isTried) { Distance = options.ToleranceSd };
    }
}
