using CsCheck;
using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Agreement;

namespace Slantwise.Engines.Tests.Statistics.Agreement;

public sealed class JudgeAgreementTests
{
    private static readonly Gen<AgreementTable[]> Pupils = Gen.Int[0, 4].Array[9].Array[1, 12]
        .Select(pupils => pupils.Select(cells => AgreementTable.Of(AgreementData.Square(3, (i, j) => cells[i * 3 + j]))).ToArray());

    [Fact]
    public void Jackknife_OnePairAPupil_IsNearTheErrorOfIndependentPairs()
    {
        // The abstractors' table taken apart into 100 pupils of one pair: .05949, computed a second time in another program, beside .05891 by formula.
        var singles = AgreementData.Pairs(AgreementData.Abstractors).Select(p => AgreementTable.Of(3, [p])).ToList();
        var jackknifed = JackknifedFigure.Of(singles, Kappa, 0.95);
        Assert.Equal(.7964094022, jackknifed.ValueFraction!.Value, 1e-9);
        Assert.Equal(.05949, jackknifed.ErrorFraction!.Value, 0.5e-5);
        Assert.Equal(100, jackknifed.PupilCount);
        // By hand: Student's 97.5th point with 99 degrees is 1.98422.
        Assert.Equal(jackknifed.ValueFraction.Value - 1.98422 * jackknifed.ErrorFraction.Value, jackknifed.LowFraction!.Value, 1e-6);
    }

    [Fact]
    public void Jackknife_EachPupilTwice_IsNoSurer()
    {
        var pupils = AgreementData.Pairs(AgreementData.Abstractors).Select(p => AgreementTable.Of(3, [p])).ToList();
        var doubled = pupils.Select(t => AgreementTable.Sum([t, t])).ToList();
        Assert.Equal(JackknifedFigure.Of(pupils, Kappa, 0.9).ErrorFraction!.Value, JackknifedFigure.Of(doubled, Kappa, 0.9).ErrorFraction!.Value, 1e-12);
    }

    [Fact]
    public void Jackknife_AnyPupils_AgreesWithTablesBuiltAnew() => Pupils.Sample(pupils =>
    {
        var own = JackknifedFigure.Of(pupils, Kappa, 0.9);
        var judged = pupils.Where(p => p.PairCount > 0).ToList();
        Assert.Equal(judged.Count, own.PupilCount);
        if (own.ErrorFraction is not { } error) return;
        // The plain second version: pseudo-values, Tukey's own way to the same error.
        var all = Kappa(AgreementTable.Sum(pupils))!.Value;
        var pseudo = judged.Select(p => judged.Count * all - (judged.Count - 1) * Kappa(AgreementTable.Sum(judged.Where(q => q != p).ToList()))!.Value).ToList();
        Assert.Equal(Math.Sqrt(pseudo.Sum(v => Math.Pow(v - pseudo.Average(), 2)) / (judged.Count - 1) / judged.Count), error, 1e-9);
    });

    [Fact]
    public void Jackknife_FigureThatHangsOnAPupil_HasNoError()
    {
        var same = AgreementTable.Of(new[,] { { 0, 0 }, { 0, 5 } });
        var other = AgreementTable.Of(new[,] { { 2, 1 }, { 1, 2 } });
        var hangs = JackknifedFigure.Of([same, same, other], Kappa, 0.9);
        Assert.NotNull(hangs.ValueFraction);
        Assert.Null(hangs.ErrorFraction);
        Assert.Equal(AgreementCautions.HangsOnOnePupil | AgreementCautions.FewPupils, hangs.Cautions);
        Assert.Equal(AgreementCautions.OneCategory | AgreementCautions.FewPupils, JackknifedFigure.Of([same, same], Kappa, 0.9).Cautions);
        Assert.Equal(AgreementCautions.NoPairs | AgreementCautions.FewPupils, JackknifedFigure.Of([AgreementTable.Of(new int[2, 2])], Kappa, 0.9).Cautions);
        Assert.Null(JackknifedFigure.Of([other], Kappa, 0.9).ErrorFraction);
    }

    [Fact]
    public void Of_AnyPupils_IsTheSumOfItsParts() => Pupils.Sample(pupils =>
    {
        var weights = AgreementWeights.Linear(3);
        var all = JudgeAgreement.Of(pupils, weights, 0.9);
        Assert.Equal(pupils.Sum(p => p.PairCount), all.Table.PairCount);
        Assert.Equal(CohenKappa.Of(all.Table, weights, 0.9), all.Kappa);
        Assert.Equal(GwetAgreement.Of(all.Table, weights, 0.9), all.Gwet);
        Assert.Equal(WilsonInterval.Of(all.Table.AgreedCount, all.Table.PairCount, 0.9), all.AgreedRange);
        Assert.Equal(all.Kappa.ValueFraction, all.KappaOverPupils.ValueFraction);
        Assert.Equal(all.Gwet.ValueFraction, all.GwetOverPupils.ValueFraction);
        Assert.Equal(ReportBalance.Of(all.Table), all.Balance);
        Assert.Equal(2 * all.Table.PairCount, all.Alpha.RatingCount);
        if (all.Agreed.LowFraction is { } low) Assert.InRange(all.Agreed.ValueFraction!.Value, low, all.Agreed.HighFraction!.Value);
    });

    [Fact]
    public void Of_TicksOfTwentyByHand_SaysWhatIsSaidElsewhere()
    {
        // By hand: 15 of 20 agree, kappa 4/9; 4 ticked too many and 1 too few, so the lean is 3/20; 5 differences as one-sided by chance: 2 · 6/32.
        var ticks = new TickAgreement(11, 4, 1, 4);
        var all = JudgeAgreement.Of([AgreementTable.Of(ticks)], AgreementWeights.Identity(2), 0.9);
        Assert.Equal(ticks.KappaFraction!.Value, all.Kappa.ValueFraction!.Value, 1e-12);
        Assert.Equal(0.75, all.Agreed.ValueFraction);
        Assert.Equal((4, 1, 20, 0.15, true), (all.Balance.OverCount, all.Balance.UnderCount, all.Balance.PairCount, all.Balance.BiasFraction!.Value, all.Balance.IsExact));
        Assert.Equal(0.375, all.Balance.ChanceFraction!.Value, 1e-12);
        Assert.Equal(AgreementCautions.FewPupils, all.Cautions);
    }

    [Fact]
    public void Balance_OfSevenDifferences_IsTheExactChance()
    {
        // By hand: 5 against 2 of 7: 2 · (1 + 7 + 21)/128 = .453125. Over-report of 5: the pupil is the second judge here, so under.
        var balance = ReportBalance.Of(AgreementData.Paradox);
        Assert.Equal(.453125, balance.ChanceFraction!.Value, 1e-9);
        Assert.Equal((2, 5), (balance.OverCount, balance.UnderCount));
        // By hand: 40 against 24: (16)²/64 = 4, two standard errors, .0455.
        var large = ReportBalance.Of(AgreementTable.Of(new[,] { { 5, 24 }, { 40, 5 } }));
        Assert.Equal(.0455, large.ChanceFraction!.Value, 0.5e-4);
        Assert.False(large.IsExact);
        bool IsExact(int over) => ReportBalance.Of(AgreementTable.Of(new[,] { { 0, 10 }, { over, 0 } })).IsExact;
        Assert.Equal((true, false), (IsExact(14), IsExact(15)));
        Assert.Equal(1, ReportBalance.Of(AgreementTable.Of(new[,] { { 3, 0 }, { 0, 3 } })).ChanceFraction);
        Assert.Null(ReportBalance.Of(AgreementTable.Of(new int[2, 2])).BiasFraction);
    }

    [Fact]
    public void Balance_OfAnyTable_TurnsWithTheJudges() => AgreementData.Any.Sample(table =>
    {
        var (one, other) = (ReportBalance.Of(table), ReportBalance.Of(AgreementData.Turned(table)));
        Assert.Equal((one.OverCount, one.UnderCount, one.ChanceFraction), (other.UnderCount, other.OverCount, other.ChanceFraction));
        Assert.Equal(table.PairCount - table.AgreedCount, one.OverCount + one.UnderCount);
        if (one is not { IsExact: true, ChanceFraction: { } chance }) return;
        // The plain second version: all 2^n ways counted by their number of overs.
        var n = one.OverCount + one.UnderCount;
        var (ways, sum) = (1.0, 0.0);
        for (var i = 0; i <= n; ways = ways * (n - i) / (i + 1), i++)
            if (Math.Abs(2 * i - n) >= Math.Abs(one.OverCount - one.UnderCount)) sum += ways / Math.Pow(2, n);
        Assert.Equal(sum, chance, 1e-12);
    });

    [Fact]
    public void Observers_SixtyIntervalsByHand_AgreeOnTheRareThingLess()
    {
        // By hand: 54 of 60 agree, but of the 10 intervals in which either saw it only 4 are shared.
        var observers = ObserverAgreement.Of(AgreementTable.Of(new[,] { { 50, 2 }, { 4, 4 } }));
        Assert.Equal(new ObserverAgreement(60, 0.9, 0.4, 50 / 56.0, 14 / 120.0, 0.75), observers);
        Assert.Equal(new ObserverAgreement(0, null, null, null, null, null), ObserverAgreement.Of(AgreementTable.Of(new int[2, 2])));
        Assert.Null(ObserverAgreement.Of(AgreementTable.Of(new[,] { { 9, 0 }, { 0, 0 } })).OccurrenceFraction);
        Assert.Throws<ArgumentException>(() => ObserverAgreement.Of(AgreementData.Abstractors));
    }

    [Fact]
    public void Observers_OfAnyTable_AgreeLessOnEachThanOnAll() => Gen.Int[0, 30].Array[4].Sample(c =>
    {
        var (one, other) = (ObserverAgreement.Of(AgreementTable.Of(new[,] { { c[0], c[1] }, { c[2], c[3] } })), ObserverAgreement.Of(AgreementTable.Of(new[,] { { c[3], c[2] }, { c[1], c[0] } })));
        Assert.Equal((one.OccurrenceFraction, one.AbsenceFraction), (other.AbsenceFraction, other.OccurrenceFraction));
        // Disagreements weigh in both, agreements in one: neither share exceeds that of all.
        if (one.OccurrenceFraction is { } seen) Assert.True(seen <= one.AgreementFraction);
        if (one.AbsenceFraction is { } not) Assert.True(not <= one.AgreementFraction);
    });

    private static double? Kappa(AgreementTable table) => CohenKappa.Of(table, AgreementWeights.Identity(table.CategoryCount), 0.9).ValueFraction;
}
