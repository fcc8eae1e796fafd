using Slantwise.Engines.Statistics.Reach;

namespace Slantwise.Records.Evidence.Reach;

/// <summary>Pupils and levels on one line, from easier to harder: a pupil at a level is believed to be as far from an even chance as their distance says.</summary>
/// <param name="LevelsLogits">One a level, in the order of the sheet; none for a level that is allowed for nobody.</param>
/// <param name="PupilsLogits">One a pupil, as in the reach: where the chance would be even; none for a pupil without an allowed level. Their mean is 0.</param>
/// <param name="SdsLogits">How uncertain each of those distances is, over the pupil's levels; 0 for none.</param>
public sealed record ReachPositions(IReadOnlyList<double?> LevelsLogits, IReadOnlyList<double?> PupilsLogits, IReadOnlyList<double> SdsLogits)
{
    // Means are a pupil's part less a level's: rows and columns in turn find both. Where a cell is missing it takes a few more rounds; one of 200 is far below a pixel.
    private const int RoundCount = 200;

    /// <summary>The positions for a task.</summary>
    /// <param name="reach">Its reach.</param>
    public static ReachPositions Of(TaskReach reach)
    {
        var seen = reach.Pupils.Select(p => p.Levels).ToList();
        var (pupils, levels) = (new double[seen.Count], new double[reach.Levels.Count]);
        var isSeen = Enumerable.Range(0, levels.Length).Select(j => seen.Any(p => p[j] is not null)).ToArray();
        for (var round = 0; round < RoundCount; round++)
        {
            for (var i = 0; i < pupils.Length; i++)
                pupils[i] = Mean(seen[i].Select((l, j) => l is { } o ? o.MeanLogits + levels[j] : (double?)null));
            for (var j = 0; j < levels.Length; j++)
                levels[j] = Mean(seen.Select((p, i) => p[j] is { } o ? pupils[i] - o.MeanLogits : (double?)null));
        }
        var middle = Mean(seen.Select((p, i) => p.Any(l => l is not null) ? pupils[i] : (double?)null));
        return new ReachPositions(
            [.. levels.Select((at, j) => isSeen[j] ? at - middle : (double?)null)],
            [.. seen.Select((p, i) => p.Any(l => l is not null) ? pupils[i] - middle : (double?)null)],
            [.. seen.Select(p => Math.Sqrt(Mean(p.Select(l => l is { } o ? o.SdLogits * o.SdLogits : (double?)null))))]);
    }

    private static double Mean(IEnumerable<double?> values) => values.Average() ?? 0;
}
