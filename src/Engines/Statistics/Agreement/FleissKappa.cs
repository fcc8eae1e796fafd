namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>Agreement of several judges beyond chance, each thing judged by as many; not necessarily the same ones.</summary>
/// <param name="ThingCount">The things judged.</param>
/// <param name="RaterCount">The judges of each; 0 without a thing.</param>
/// <param name="AgreementFraction">The share of pairs of judges who agree; none without a thing.</param>
/// <param name="ChanceFraction">The share that would agree by chance.</param>
/// <param name="KappaFraction">Agreement beyond chance, at most 1; none where it is not defined.</param>
/// <param name="DistanceSd">How far kappa lies from 0 in standard errors as they are when nobody agrees but by chance. It tests "no agreement at all" and is no range.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>With two judges it is Scott's pi. Sources: [Fleiss1971]; [FleissNeeLandis1979] for the error.</remarks>
public readonly record struct FleissKappa(
    int ThingCount, int RaterCount, double? AgreementFraction, double? ChanceFraction, double? KappaFraction, double? DistanceSd, AgreementCautions Cautions)
{
    /// <summary>Kappa of several judges.</summary>
    /// <param name="ratings">Each thing judged by equally many, 2 or more.</param>
    /// <exception cref="ArgumentException">Things with different numbers of judges, or with fewer than 2.</exception>
    public static FleissKappa Of(RatingCounts ratings)
    {
        var n = ratings.Things.Count;
        if (n == 0) return new(0, 0, null, null, null, null, AgreementCautions.NoPairs);
        var m = ratings.Things[0].Sum();
        if (m < 2 || ratings.Things.Any(t => t.Sum() != m))
            throw new ArgumentException("Each thing has to be judged by equally many, at least 2; AC1 and alpha allow otherwise.", nameof(ratings));

        var share = Enumerable.Range(0, ratings.CategoryCount).Select(c => ratings.Things.Sum(t => t[c]) / ((double)n * m)).ToArray();
        var agreed = ratings.Things.Average(RatingCounts.Agreement);
        var cautions = (n < 10 ? AgreementCautions.FewPairs : 0) | (share.Max() > .85 ? AgreementCautions.MostlyOneCategory : 0);
        // Counted, not computed: a sum of squared shares would miss 1 by a rounding.
        if (share.Count(p => p > 0) < 2) return new(n, m, agreed, 1, null, null, cautions | AgreementCautions.OneCategory);

        var chance = share.Sum(p => p * p);
        var kappa = (agreed - chance) / (1 - chance);
        var room = share.Sum(p => p * (1 - p));
        var error = Math.Sqrt(2 * (room * room - share.Sum(p => p * (1 - p) * (1 - 2 * p)))) / (room * Math.Sqrt((double)n * m * (m - 1)));
        return new(n, m, agreed, chance, kappa, kappa / error, cautions);
    }
}
