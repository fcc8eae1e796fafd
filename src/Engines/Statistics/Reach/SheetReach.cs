namespace Slantwise.Engines.Statistics.Reach;

/// <summary>Whom a task's levels include before anybody has tried them, as far as is believed now.</summary>
/// <param name="Pupils">One a pupil, in the order given.</param>
/// <param name="Levels">One a level, in the order given.</param>
/// <param name="IncludedCount">The expected number of pupils included.</param>
/// <param name="LeastCount">Where the central 90 % of that number begin.</param>
/// <param name="MostCount">Where they end.</param>
public sealed record SheetReach(
    IReadOnlyList<PupilReach> Pupils, IReadOnlyList<LevelReach> Levels, double IncludedCount, int LeastCount, int MostCount)
{
    private const double TailFraction = .05;

    /// <summary>The reach of levels for pupils.</summary>
    /// <param name="pupils">Any number, each with the same number of levels.</param>
    /// <param name="band">The chances of success that count as included.</param>
    /// <returns>
    /// A pupil's own uncertainty moves all levels together, what is left of a level's moves it alone; pupils are taken as independent of each
    /// other, so the range of the number is a little too narrow where a level itself is uncertain for all.
    /// </returns>
    /// <exception cref="ArgumentException">Pupils with different numbers of levels; a mean or a standard deviation that is not finite or below 0.</exception>
    public static SheetReach Of(IReadOnlyList<PupilOutlook> pupils, ReachBand band)
    {
        var levelCount = pupils.Count == 0 ? 0 : pupils[0].Levels.Count;
        foreach (var pupil in pupils) OutlookNodes.Check(pupil, levelCount);

        var (reached, expected, nobody) = (new PupilReach[pupils.Count], new double[levelCount], Enumerable.Repeat(1.0, levelCount).ToArray());
        for (var i = 0; i < pupils.Count; i++)
        {
            var nodes = new OutlookNodes(pupils[i], band);
            reached[i] = new PupilReach(pupils[i].Levels.Count(l => l is not null), 1 - nodes.NoneWithin(), 1 - nodes.AllCertain());
            for (var j = 0; j < levelCount; j++)
            {
                var within = nodes.Within(j);
                expected[j] += within;
                nobody[j] *= 1 - within;
            }
        }
        var levels = expected.Select((count, j) => new LevelReach(count, 1 - nobody[j])).ToArray();
        var (least, most) = Range([.. reached.Select(r => r.IncludedFraction)]);
        return new SheetReach(reached, levels, reached.Sum(r => r.IncludedFraction), least, most);
    }

    // The number of successes of independent trials with different chances, one after the other: the Poisson-binomial distribution.
    private static (int Least, int Most) Range(double[] chances)
    {
        var counts = new double[chances.Length + 1];
        counts[0] = 1;
        for (var i = 0; i < chances.Length; i++)
            for (var k = i + 1; k >= 0; k--)
                counts[k] = counts[k] * (1 - chances[i]) + (k > 0 ? counts[k - 1] * chances[i] : 0);
        var (least, most, below) = (-1, chances.Length, 0.0);
        for (var k = 0; k < counts.Length; k++)
        {
            below += counts[k];
            if (least < 0 && below > TailFraction) least = k;
            if (below >= 1 - TailFraction)
            {
                most = k;
                break;
            }
        }
        return (Math.Max(0, least), most);
    }
}
