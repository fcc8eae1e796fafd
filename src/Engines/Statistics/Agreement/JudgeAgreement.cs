namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>All that is to be said of two judges over some pupils: a pupil's own checks beside the teacher's, or two observers.</summary>
/// <param name="Table">All pupils' judgements; its margins are to be shown with any coefficient.</param>
/// <param name="PupilCount">The pupils with something judged by both.</param>
/// <param name="AgreedRange">Range of the share that agrees, every pair taken for independent; none without a pair.</param>
/// <param name="Agreed">The share that agrees, with its range over pupils.</param>
/// <param name="Kappa">Cohen's kappa, with the error of independent pairs.</param>
/// <param name="KappaOverPupils">The same, with its range over pupils.</param>
/// <param name="Gwet">AC1, or AC2 with weights.</param>
/// <param name="GwetOverPupils">The same, with its range over pupils.</param>
/// <param name="Alpha">Krippendorff's alpha, nominal.</param>
/// <param name="Balance">Which of the two gives more.</param>
/// <param name="Cautions">What to know before believing any of it.</param>
public sealed record JudgeAgreement(
    AgreementTable Table, int PupilCount, WilsonInterval? AgreedRange, JackknifedFigure Agreed, AgreementFigure Kappa, JackknifedFigure KappaOverPupils,
    AgreementFigure Gwet, JackknifedFigure GwetOverPupils, KrippendorffAlpha Alpha, ReportBalance Balance, AgreementCautions Cautions)
{
    /// <summary>The agreement over some pupils.</summary>
    /// <param name="pupils">One table for each pupil, all with the same categories, at least one.</param>
    /// <param name="weights">Of as many categories: linear for checks of three or four grades, identity for ticks.</param>
    /// <param name="confidenceFraction">Between 0 and 1.</param>
    /// <exception cref="ArgumentException">No table; tables or weights with different categories.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A confidence that is not between 0 and 1.</exception>
    public static JudgeAgreement Of(IReadOnlyList<AgreementTable> pupils, AgreementWeights weights, double confidenceFraction)
    {
        var table = AgreementTable.Sum(pupils);
        weights.Check(table);
        var agreed = JackknifedFigure.Of(pupils, t => t.PairCount == 0 ? null : (double)t.AgreedCount / t.PairCount, confidenceFraction);
        var kappa = CohenKappa.Of(table, weights, confidenceFraction);
        return new(
            table, agreed.PupilCount, WilsonInterval.Of(table.AgreedCount, table.PairCount, confidenceFraction), agreed, kappa,
            JackknifedFigure.Of(pupils, t => CohenKappa.Of(t, weights, confidenceFraction).ValueFraction, confidenceFraction),
            GwetAgreement.Of(table, weights, confidenceFraction),
            JackknifedFigure.Of(pupils, t => GwetAgreement.Of(t, weights, confidenceFraction).ValueFraction, confidenceFraction),
            AlphaOf(table), ReportBalance.Of(table), kappa.Cautions | agreed.Cautions);
    }

    private static KrippendorffAlpha AlphaOf(AgreementTable table) => KrippendorffAlpha.Of((
        from i in Enumerable.Range(0, table.CategoryCount)
        from j in Enumerable.Range(0, table.CategoryCount)
        from _ in Enumerable.Range(0, table[i, j])
        select (IReadOnlyList<double?>)[i, j]).ToList(), RatingScale.Nominal);
}
