using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Host.Studies;

/// <summary>All coefficients that some judgements allow.</summary>
/// <param name="study">The judgements.</param>
/// <param name="confidenceFraction">Of ranges.</param>
internal sealed class Coefficients(JudgementStudy study, double confidenceFraction)
{
    private readonly IReadOnlyList<AgreementTable>? _pupils = study.Raters.Count == 2 ? study.PairTables() : null;

    /// <summary>Two judges' categories against each other; none for more judges.</summary>
    public AgreementTable? Table => _pupils is null ? null : AgreementTable.Sum(_pupils);

    /// <summary>Each by itself, every thing taken for independent.</summary>
    public IEnumerable<Coefficient> All() => (Table is { } table ? OfTwo(table) : OfMany()).Concat(Alphas());

    /// <summary>With ranges over pupils; empty where no pupils are named or there are more than two judges.</summary>
    public IEnumerable<Coefficient> OverPupils()
    {
        if (_pupils is null || !study.HasPupils) yield break;
        yield return Coefficient.Of("agreement", null, JackknifedFigure.Of(_pupils, t => t.PairCount == 0 ? null : (double)t.AgreedCount / t.PairCount, confidenceFraction));
        foreach (var (name, weights) in Weights(_pupils[0].CategoryCount))
        {
            yield return Coefficient.Of("cohenKappa", name, JackknifedFigure.Of(_pupils, t => CohenKappa.Of(t, weights, confidenceFraction).ValueFraction, confidenceFraction));
            yield return Coefficient.Of(Gwet(name), name, JackknifedFigure.Of(_pupils, t => GwetAgreement.Of(t, weights, confidenceFraction).ValueFraction, confidenceFraction));
        }
    }

    private static string Gwet(string weighting) => weighting == "identity" ? "gwetAc1" : "gwetAc2";

    private IEnumerable<(string Name, AgreementWeights Weights)> Weights(int categoryCount)
    {
        yield return ("identity", AgreementWeights.Identity(categoryCount));
        // With two categories all weights are the same; without an order steps between them mean nothing.
        if (categoryCount < 3 || !study.IsOrdered) yield break;
        yield return ("linear", AgreementWeights.Linear(categoryCount));
        yield return ("quadratic", AgreementWeights.Quadratic(categoryCount));
    }

    private IEnumerable<Coefficient> OfTwo(AgreementTable table)
    {
        var kappas = Weights(table.CategoryCount).Select(w => (w.Name, Figure: CohenKappa.Of(table, w.Weights, confidenceFraction))).ToList();
        var range = WilsonInterval.Of(table.AgreedCount, table.PairCount, confidenceFraction);
        yield return new("agreement", null, table.PairCount, kappas[0].Figure.AgreementFraction, null, range?.LowFraction, range?.HighFraction,
            kappas[0].Figure.Cautions & ~AgreementCautions.OneCategory);
        foreach (var (name, figure) in kappas) yield return Coefficient.Of("cohenKappa", name, figure);
        foreach (var (name, weights) in Weights(table.CategoryCount)) yield return Coefficient.Of(Gwet(name), name, GwetAgreement.Of(table, weights, confidenceFraction));
        var pi = FleissKappa.Of(study.Counts());
        yield return new("scottPi", null, pi.ThingCount, pi.KappaFraction, null, null, null, pi.Cautions);
    }

    private IEnumerable<Coefficient> OfMany()
    {
        var counts = study.Counts();
        var gwet = GwetAgreement.Of(counts, confidenceFraction);
        yield return new("agreement", "pairsOfJudges", gwet.PairCount, gwet.AgreementFraction, null, null, null, gwet.Cautions);
        if (counts.Things.Select(t => t.Sum()).Distinct().Skip(1).Any())
            yield return new("fleissKappa", null, counts.Things.Count, null, null, null, null, AgreementCautions.None) { Reason = "UndefinedUnequalJudges" };
        else
        {
            var fleiss = FleissKappa.Of(counts);
            yield return new("fleissKappa", null, fleiss.ThingCount, fleiss.KappaFraction, null, null, null, fleiss.Cautions);
        }
        yield return Coefficient.Of("gwetAc1", "identity", gwet);
    }

    private IEnumerable<Coefficient> Alphas()
    {
        foreach (var scale in Enum.GetValues<RatingScale>())
        {
            if (scale == RatingScale.Ordinal && !study.IsOrdered) continue;
            if (scale is RatingScale.Interval or RatingScale.Ratio && study.Values is null) continue;
            if (scale == RatingScale.Ratio && study.Values!.Any(v => v < 0)) continue;
            var alpha = KrippendorffAlpha.Of(study.On(scale), scale);
            yield return new("krippendorffAlpha", System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(scale.ToString()), alpha.UnitCount, alpha.AlphaFraction, null, null, null, alpha.Cautions);
        }
    }
}
