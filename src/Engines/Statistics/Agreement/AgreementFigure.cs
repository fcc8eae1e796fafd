namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>A coefficient of agreement with its range.</summary>
/// <param name="PairCount">What it rests on.</param>
/// <param name="AgreementFraction">The share that agrees, weighted, 0 to 1; none without a pair.</param>
/// <param name="ChanceFraction">The share that would agree by chance, as this coefficient thinks of chance; none without a pair.</param>
/// <param name="ValueFraction">Agreement beyond chance, as a share of what is possible beyond chance, at most 1 and below 0 where judges agree less than by chance; none where it is not defined.</param>
/// <param name="ErrorFraction">Its standard error, every pair taken for independent; none together with the value.</param>
/// <param name="LowFraction">Lower end of the range, at least −1.</param>
/// <param name="HighFraction">Upper end of the range, at most 1.</param>
/// <param name="Cautions">What to know before believing it.</param>
public readonly record struct AgreementFigure(
    int PairCount, double? AgreementFraction, double? ChanceFraction, double? ValueFraction,
    double? ErrorFraction, double? LowFraction, double? HighFraction, AgreementCautions Cautions)
{
    internal static AgreementFigure Defined(
        int pairCount, double agreement, double chance, double variance, double confidence, AgreementCautions cautions)
    {
        var (value, error) = ((agreement - chance) / (1 - chance), Math.Sqrt(variance));
        var half = Confidence.HalfWidthSd(confidence) * error;
        return new(pairCount, agreement, chance, value, error, Math.Max(-1, value - half), Math.Min(1, value + half), cautions);
    }

    internal static AgreementCautions CautionsOf(AgreementTable table)
    {
        if (table.PairCount == 0) return AgreementCautions.NoPairs;
        var most = Enumerable.Range(0, table.CategoryCount).Max(c => table.FirstCount(c) + table.SecondCount(c));
        return (table.PairCount < 10 ? AgreementCautions.FewPairs : 0)
            | (most > .85 * 2 * table.PairCount ? AgreementCautions.MostlyOneCategory : 0);
    }
}
