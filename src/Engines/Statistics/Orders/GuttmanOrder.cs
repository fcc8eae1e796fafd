namespace Slantwise.Engines.Statistics.Orders;

/// <summary>Whether levels lie in one order for all: who passes a level passes the easier ones. A sheet's order is a guess until then.</summary>
/// <param name="PupilCount">Pupils who tried a level.</param>
/// <param name="AnswerCount">Levels tried, over all of them.</param>
/// <param name="ErrorCount">Answers that differ from what the pupil's number of passes and the order foretell; one pass out of place makes two.</param>
/// <param name="ReproducibilityFraction">The share of answers the order foretells, 0 to 1; .90 is the usual floor. None without an answer.</param>
/// <param name="ErrorFraction">Its standard error, leaving out one pupil at a time; none for a single pupil.</param>
/// <param name="MarginalFraction">The share foretold by saying for each level what most did, whatever the order: reproducibility is worth what it has above this.</param>
/// <param name="ScalabilityFraction">How much of what the margins leave open the order foretells, at most 1; .60 is the usual floor. None where they leave nothing open.</param>
/// <param name="Levels">In the order given.</param>
/// <param name="Neighbours">Each level beside the next.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>Errors are counted against the pattern of the same number of passes. Sources: [Guttman1950]; [Edwards1957] chapter 7 for the counting; [Menzel1953] for scalability, here against the margins of the levels only.</remarks>
public sealed record GuttmanOrder(
    int PupilCount, int AnswerCount, int ErrorCount, double? ReproducibilityFraction, double? ErrorFraction, double? MarginalFraction,
    double? ScalabilityFraction, IReadOnlyList<LevelAnswers> Levels, IReadOnlyList<LevelPair> Neighbours, OrderCautions Cautions)
{
    /// <summary>How well an order of levels foretells pupils' answers.</summary>
    /// <param name="pupils">For each pupil whether each level was passed, easiest level first; none where it was not tried.</param>
    /// <param name="levelCount">The levels, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2 levels.</exception>
    /// <exception cref="ArgumentException">A pupil without an answer, or none, for each level.</exception>
    public static GuttmanOrder Of(IReadOnlyList<IReadOnlyList<bool?>> pupils, int levelCount)
    {
        if (levelCount < 2) throw new ArgumentOutOfRangeException(nameof(levelCount), levelCount, "At least 2 levels have an order.");
        if (pupils.Any(p => p.Count != levelCount)) throw new ArgumentException("Each pupil has an answer, or none, for each level.", nameof(pupils));

        var (tried, passed, wrong) = (new int[levelCount], new int[levelCount], new int[levelCount]);
        var own = new List<(int Answers, int Errors)>();
        foreach (var pupil in pupils)
        {
            var (answers, errors, passes) = (0, 0, pupil.Count(a => a == true));
            for (var level = 0; level < levelCount; level++)
            {
                if (pupil[level] is not { } pass) continue;
                tried[level]++;
                if (pass) passed[level]++;
                // Of the levels tried the easiest ones, as many as were passed, should be the ones passed.
                if (pass != answers++ < passes)
                {
                    errors++;
                    wrong[level]++;
                }
            }
            if (answers > 0) own.Add((answers, errors));
        }

        var (n, e) = (tried.Sum(), wrong.Sum());
        var levels = Enumerable.Range(0, levelCount).Select(l => new LevelAnswers(tried[l], passed[l], wrong[l])).ToArray();
        var neighbours = Enumerable.Range(0, levelCount - 1).Select(l => Pair(pupils, l)).ToArray();
        if (n == 0) return new(0, 0, 0, null, null, null, null, levels, neighbours, OrderCautions.NoData);

        var common = levels.Sum(l => Math.Max(l.PassedCount, l.TriedCount - l.PassedCount));
        var cautions = (own.Count < 10 ? OrderCautions.FewPupils : 0) | (2 * n < own.Count * levelCount ? OrderCautions.MostlyUntried : 0)
            | (common == n ? OrderCautions.NothingToOrder : 0);
        return new(
            own.Count, n, e, 1 - (double)e / n, Error(own, n, e), (double)common / n,
            common == n ? null : 1 - (double)e / (n - common), levels, neighbours, cautions);
    }

    private static LevelPair Pair(IReadOnlyList<IReadOnlyList<bool?>> pupils, int easier)
    {
        var both = pupils.Where(p => p[easier] is not null && p[easier + 1] is not null).ToList();
        return new(easier, easier + 1, both.Count, both.Count(p => p[easier] == true && p[easier + 1] == false), both.Count(p => p[easier] == false && p[easier + 1] == true));
    }

    private static double? Error(List<(int Answers, int Errors)> own, int n, int e)
    {
        if (own.Count < 2) return null;
        var spread = new MeanSquare();
        foreach (var (answers, errors) in own) spread.Add(1 - (double)(e - errors) / (n - answers));
        return spread.JackknifeError;
    }
}
