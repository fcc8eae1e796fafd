using MathNet.Numerics;

namespace Slantwise.Engines.Statistics.Holds;

/// <summary>Whether groups of holds last equally long, as far as the falls can say.</summary>
/// <param name="ChiSquareSd2">How far falls lie from those expected if all groups were alike, in squared standard deviations, 0 or more; none where nothing can be compared.</param>
/// <param name="DegreesCount">Groups compared less one; less where some never meet at a fall; 0 where nothing can be compared.</param>
/// <param name="ChanceFraction">How often equal groups would differ by so much or more, 0 to 1; none together with the distance.</param>
/// <param name="Groups">Falls seen and expected, in the order given.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Sources: [Mantel1966]; [KalbfleischPrentice2002] section 1.5.</remarks>
public sealed record LogRank(
    double? ChiSquareSd2, int DegreesCount, double? ChanceFraction, IReadOnlyList<LogRankGroup> Groups, HoldCautions Cautions)
{
    /// <summary>The comparison of some groups.</summary>
    /// <param name="groups">Two or more, each any number of holds in any order. A group that is never at risk when somebody falls is left out of the comparison.</param>
    /// <exception cref="ArgumentException">Fewer than two groups.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A hold that is negative or not finite.</exception>
    public static LogRank Of(IReadOnlyList<IReadOnlyList<HoldTime>> groups)
    {
        if (groups.Count < 2) throw new ArgumentException("At least two groups are compared.", nameof(groups));
        foreach (var group in groups) KaplanMeier.Check(group);
        var all = groups.SelectMany((holds, g) => holds.Select(h => (h.HeldS, h.HasFallen, Group: g))).OrderBy(h => h.HeldS).ToList();
        var k = groups.Count;
        var (expected, seen) = (new double[k], new int[k]);
        var variance = new double[k, k];
        var atRisk = groups.Select(g => (double)g.Count).ToArray();
        for (var i = 0; i < all.Count;)
        {
            var tie = all.Skip(i).TakeWhile(h => h.HeldS == all[i].HeldS).ToList();
            AddTie(tie.Count(h => h.HasFallen), atRisk, expected, variance);
            foreach (var (_, hasFallen, g) in tie)
            {
                atRisk[g]--;
                if (hasFallen) seen[g]++;
            }
            i += tie.Count;
        }

        var rows = groups.Select((g, i) => new LogRankGroup(g.Count, seen[i], expected[i])).ToArray();
        var flat = groups.SelectMany(g => g).ToList();
        var cautions = KaplanMeier.CautionsOf(flat, false, 0);
        if (flat.Where(h => h.Pupil is not null).GroupBy(h => h.Pupil).Any(g => g.Skip(1).Any())) cautions |= HoldCautions.RepeatedPupils;
        var compared = Enumerable.Range(0, k).Where(g => variance[g, g] > 0).ToList();
        if (compared.Count < 2) return new(null, 0, null, rows, cautions);

        var (chi, degrees) = Distance(compared.SkipLast(1).ToList(), seen.Zip(expected, (o, e) => o - e).ToArray(), variance);
        return new(chi, degrees, SpecialFunctions.GammaUpperRegularized(degrees / 2.0, chi / 2), rows, cautions);
    }

    private static void AddTie(int fallen, double[] atRisk, double[] expected, double[,] variance)
    {
        var n = atRisk.Sum();
        if (fallen == 0 || n == 0) return;
        // With everybody at risk falling at once nothing is left to chance: the last factor is 0, also for n = 1.
        var room = n > 1 ? fallen * (n - fallen) / (n - 1) : 0;
        for (var a = 0; a < atRisk.Length; a++)
        {
            expected[a] += fallen * atRisk[a] / n;
            for (var b = 0; b < atRisk.Length; b++)
                variance[a, b] += room * ((a == b ? atRisk[a] / n : 0) - atRisk[a] * atRisk[b] / (n * n));
        }
    }

    // The squared length of the differences of all compared groups but one: they sum to 0, so the last adds nothing.
    private static (double ChiSquare, int Degrees) Distance(List<int> kept, double[] difference, double[,] variance)
    {
        var m = kept.Count;
        var rows = new double[m, m + 1];
        for (var a = 0; a < m; a++)
        {
            for (var b = 0; b < m; b++) rows[a, b] = variance[kept[a], kept[b]];
            rows[a, m] = difference[kept[a]];
        }
        var (sum, degrees) = (0.0, 0);
        for (var pivot = 0; pivot < m; pivot++)
        {
            // Groups that never meet at a fall leave a pivot of 0 and carry no comparison.
            if (rows[pivot, pivot] <= 1e-12 * variance[kept[pivot], kept[pivot]]) continue;
            sum += rows[pivot, m] * rows[pivot, m] / rows[pivot, pivot];
            degrees++;
            for (var a = pivot + 1; a < m; a++)
            {
                var factor = rows[a, pivot] / rows[pivot, pivot];
                for (var b = pivot; b <= m; b++) rows[a, b] -= factor * rows[pivot, b];
            }
        }
        return (sum, degrees);
    }
}
