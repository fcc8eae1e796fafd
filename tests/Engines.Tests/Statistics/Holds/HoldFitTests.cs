using CsCheck;
using Slantwise.Engines.Statistics.Holds;

namespace Slantwise.Engines.Tests.Statistics.Holds;

public sealed class HoldFitTests
{
    // Source: [Therneau2023] survreg of R's survival 3.5.3, twelve digits; its own convergence leaves about 1e-7 of them.
    [Theory]
    [InlineData("gehan", "weibull", HoldLaw.Weibull, "treatcontrol")]
    [InlineData("gehan", "loglogistic", HoldLaw.LogLogistic, "treatcontrol")]
    [InlineData("aml", "weibull", HoldLaw.Weibull, "xNonmaintained")]
    [InlineData("aml", "loglogistic", HoldLaw.LogLogistic, "xNonmaintained")]
    public void Fit_DataOfR_AgreesInEstimatesAndErrors(string data, string dist, HoldLaw law, string effect)
    {
        var (first, second) = data == "gehan" ? (HoldData.Treated, HoldData.Controls) : (HoldData.Maintained, HoldData.NotMaintained);
        var curves = HoldFit.Fit(law, Grouped(first, second), 2).Curves!;
        foreach (var row in GoldenTable.Rows("Holds/survreg_aft.csv").Where(r => r["data"] == data && r["dist"] == dist))
        {
            var expected = new LogScale(row.Number("est")!.Value, row.Number("se")!.Value);
            var own = row["term"] == "(Intercept)" ? curves.ScaleOf(0)
                : row["term"] == effect ? curves.Difference(1, 0)
                : new(Math.Log(curves.SpreadNats), curves.LogSpreadErrorNats);
            Assert.Equal(expected.ValueNats, own.ValueNats, 1e-6);
            Assert.Equal(expected.ErrorNats, own.ErrorNats, 1e-6);
            Assert.Equal(row.Number("scale")!.Value, curves.SpreadNats, 1e-6);
            Assert.Equal(row.Number("loglik")!.Value, curves.LogLikelihoodNats, 1e-7);
        }
    }

    [Fact]
    public void Fit_UnitsOfNist_GivesTheHandbooksWeibull()
    {
        // Source: [NIST2012] section 8.4.1.3: eta 606.528, beta 1.7208. The page prints the log likelihood −75.135 without its sign.
        var curves = HoldFit.Fit(HoldLaw.Weibull, Grouped(HoldData.NistUnits), 1).Curves!;
        Assert.Equal(606.528, Math.Exp(curves.ScaleOf(0).ValueNats), 0.5e-3);
        Assert.Equal(1.7208, 1 / curves.SpreadNats, 0.5e-4);
        Assert.Equal(-75.135, curves.LogLikelihoodNats, 0.5e-3);
        // Source: [Therneau2023] survreg on the same units.
        Assert.Equal(606.5275580043, Math.Exp(curves.ScaleOf(0).ValueNats), 606.5e-6);
        Assert.Equal(0.2059439090, curves.ScaleOf(0).ErrorNats, 1e-6);
        Assert.Equal(0.2918127631, curves.LogSpreadErrorNats, 1e-6);
        Assert.Equal(164.0224386611, curves.TimeS(0, 0.9)!.Value, 1e-3);
        Assert.Equal(0.4881022995, curves.Held(0, 500, 0.95).HeldFraction, 1e-6);
    }

    [Fact]
    public void Fit_LogLogistic_IsAPassOrFailModelInLogTime()
    {
        // Source: [Therneau2023] survreg: logit S(10 | 6-MP) = 1.565390, slope 1.829648, median 23.5271.
        var curves = HoldFit.Fit(HoldLaw.LogLogistic, Grouped(HoldData.Treated, HoldData.Controls), 2).Curves!;
        var held = curves.Held(0, 10, 0.95);
        Assert.Equal(1.565390, Math.Log(held.HeldFraction / (1 - held.HeldFraction)), 1e-5);
        Assert.Equal(1.829648, 1 / curves.SpreadNats, 1e-5);
        Assert.Equal(23.5271, curves.TimeS(0, 0.5)!.Value, 1e-3);
        Assert.InRange(held.HeldFraction, held.LowFraction, held.HighFraction);
    }

    [Fact]
    public void Fit_JudgedHolds_IsALogisticRegression()
    {
        // By hand: 10 of 40 ended by 4 s, 20 of 40 by 8 s, 30 of 40 by 16 s:
        // logits −ln 3, 0, ln 3 at even steps of ln 2, so the slope is ln 3 / ln 2 and the median 8 s.
        var holds = new[] { (4.0, 10), (8, 20), (16, 30) }.SelectMany(x =>
            Enumerable.Range(0, 40).Select(i => new GroupedHold(i < x.Item2 ? new(0, x.Item1) : new(x.Item1, null)))).ToList();
        var curves = HoldFit.Fit(HoldLaw.LogLogistic, holds, 1).Curves!;
        Assert.Equal(8, curves.TimeS(0, 0.5)!.Value, 1e-7);
        Assert.Equal(Math.Log(2) / Math.Log(3), curves.SpreadNats, 1e-8);
        // The error of the median's log, from the information sums: slope² Σ n p q in the place at its centre.
        var (w, slope) = (new[] { 7.5, 10, 7.5 }, Math.Log(3) / Math.Log(2));
        Assert.Equal(1 / (slope * Math.Sqrt(w.Sum())), curves.ScaleOf(0).ErrorNats, 1e-7);
    }

    [Theory]
    [InlineData(HoldLaw.LogLogistic)]
    [InlineData(HoldLaw.Weibull)]
    public void Fit_NarrowSpans_AgreesWithExactLengths(HoldLaw law)
    {
        var exact = HoldFit.Fit(law, Grouped(HoldData.Treated), 1).Curves!;
        var narrow = HoldFit.Fit(law, Grouped(HoldData.Treated)
            .Select(h => h.Span.IsExact ? h with { Span = new(h.Span.LowS - 1e-4, h.Span.LowS + 1e-4) } : h).ToList(), 1).Curves!;
        Assert.Equal(exact.ScaleOf(0).ValueNats, narrow.ScaleOf(0).ValueNats, 1e-7);
        Assert.Equal(exact.SpreadNats, narrow.SpreadNats, 1e-7);
        Assert.Equal(exact.ScaleOf(0).ErrorNats, narrow.ScaleOf(0).ErrorNats, 1e-5);
        // Each span's chance is the density times its width.
        Assert.Equal(exact.LogLikelihoodNats + 9 * Math.Log(2e-4), narrow.LogLikelihoodNats, 1e-6);
    }

    private static readonly Gen<GroupedHold> AnyHold = Gen.Select(Gen.Int[1, 40], Gen.Int[0, 4], Gen.Int[0, 1]).Select((t, kind, group) => new GroupedHold(
        kind switch { 0 => new(t, null), 1 => new(0, t), 2 => new(t - 0.5, t + 0.5), 3 => new(t, t), _ => new(t, t + 3) }, group));

    [Fact]
    public void Fit_AnyHolds_NoNearbyCurveIsLikelier() =>
        Gen.Select(AnyHold.List[4, 40], Gen.Bool).Sample((holds, weibull) =>
        {
            var law = weibull ? HoldLaw.Weibull : HoldLaw.LogLogistic;
            var fit = HoldFit.Fit(law, holds, 2);
            Assert.NotEqual(HoldCautions.NotConverged, fit.Cautions & HoldCautions.NotConverged);
            if (fit.Curves is not { } curves)
            {
                Assert.NotEqual(HoldCautions.None, fit.Cautions & ~HoldCautions.FewHolds);
                return;
            }
            // The plain second version of the likelihood, in scale and spread; a top in one pair of unknowns is one in any.
            double[] at = [curves.ScaleOf(0).ValueNats, curves.ScaleOf(1).ValueNats, Math.Log(curves.SpreadNats)];
            var top = Plain(law, holds, at);
            Assert.Equal(top, curves.LogLikelihoodNats, 1e-6);
            for (var i = 0; i < 3; i++)
                foreach (var step in new[] { -.02, -1e-3, 1e-3, .02 })
                    Assert.True(Plain(law, holds, at.Select((a, j) => a + (i == j ? step : 0)).ToArray()) <= top + 1e-9, $"{i} {step}");
        });

    [Fact]
    public void Fit_InMinutesInsteadOfSeconds_MovesOnlyTheScale() => AnyHold.List[10, 40].Sample(holds =>
    {
        var (seconds, minutes) = (HoldFit.Fit(HoldLaw.LogLogistic, holds, 2), HoldFit.Fit(
            HoldLaw.LogLogistic, holds.Select(h => h with { Span = new(h.Span.LowS * 60, h.Span.HighS * 60) }).ToList(), 2));
        Assert.Equal(seconds.Cautions, minutes.Cautions);
        if (seconds.Curves is null) return;
        Assert.Equal(seconds.Curves.ScaleOf(0).ValueNats + Math.Log(60), minutes.Curves!.ScaleOf(0).ValueNats, 1e-5);
        Assert.Equal(seconds.Curves.SpreadNats, minutes.Curves.SpreadNats, 1e-5 * Math.Max(1, seconds.Curves.SpreadNats));
    });

    [Fact]
    public void Fit_SeveralHoldsAPupil_ErrorsComeFromLeavingOutPupils()
    {
        // Each hold twice by one pupil: the errors are those of single holds, not 1/√2 of them.
        var once = Grouped(HoldData.Treated, HoldData.Controls);
        var twice = once.SelectMany((h, i) => new[] { h with { Pupil = i }, h with { Pupil = i } }).ToList();
        var fit = HoldFit.Fit(HoldLaw.LogLogistic, twice, 2);
        Assert.Equal((true, 42, 84), (fit.IsByPupil, fit.PupilCount, fit.HoldCount));

        // The plain second version: the whole fit again without each pupil. One step of Newton's method each stands in for it within a few per cent.
        var without = Enumerable.Range(0, 42).Select(p => HoldFit.Fit(HoldLaw.LogLogistic, twice.Where(h => h.Pupil != p).ToList(), 2).Curves!).ToList();
        void Near(Func<FittedLaw, LogScale> figure)
        {
            var values = without.Select(c => figure(c).ValueNats).ToList();
            var error = Math.Sqrt(41.0 / 42 * values.Sum(v => (v - values.Average()) * (v - values.Average())));
            Assert.Equal(error, figure(fit.Curves!).ErrorNats, 0.04 * error);
        }
        Near(c => c.ScaleOf(0));
        Near(c => c.Difference(1, 0));
        Near(c => new(Math.Log(c.SpreadNats), c.LogSpreadErrorNats));
        var single = HoldFit.Fit(HoldLaw.LogLogistic, once, 2).Curves!.ScaleOf(0);
        Assert.Equal(single.ValueNats, fit.Curves!.ScaleOf(0).ValueNats, 1e-8);
        Assert.InRange(fit.Curves.ScaleOf(0).ErrorNats / single.ErrorNats, 0.85, 1.25);
    }

    [Fact]
    public void Fit_FourAlikePupils_HasTheErrorOfFittingAnewWithoutEach()
    {
        // With pupils so alike one step of Newton's method is as good as a whole fit, and four of them tell (n − 1)/n from 1.
        var holds = Enumerable.Range(0, 4).SelectMany(p => Enumerable.Range(1, 60).Select(i =>
        {
            var time = Math.Exp(2 + .02 * p + .6 * Math.Log(i / (61.0 - i)));
            return new GroupedHold(time > 15 ? new(15, null) : new(time - .2, time + .2), 0, p);
        })).ToList();
        var fit = HoldFit.Fit(HoldLaw.LogLogistic, holds, 1);
        var without = Enumerable.Range(0, 4).Select(p => HoldFit.Fit(HoldLaw.LogLogistic, holds.Where(h => h.Pupil != p).ToList(), 1).Curves!.ScaleOf(0).ValueNats).ToList();
        var error = Math.Sqrt(3 / 4.0 * without.Sum(w => (w - without.Average()) * (w - without.Average())));
        Assert.Equal(error, fit.Curves!.ScaleOf(0).ErrorNats, .01 * error);
        Assert.Equal(HoldCautions.FewPupils, fit.Cautions);
    }

    [Fact]
    public void Fit_HoldsThatCannotTell_SaysWhy()
    {
        HoldCautions Of(int groups, params GroupedHold[] holds)
        {
            var fit = HoldFit.Fit(HoldLaw.LogLogistic, holds, groups);
            Assert.Null(fit.Curves);
            return fit.Cautions & ~HoldCautions.FewHolds;
        }
        GroupedHold Exact(double t, int g = 0) => new(new(t, t), g);
        GroupedHold Beyond(double t, int g = 0) => new(new(t, null), g);
        GroupedHold By(double t, int g = 0) => new(new(0, t), g);

        Assert.Equal(HoldCautions.NoHolds, Of(1));
        Assert.Equal(HoldCautions.NobodyFell, Of(1, Beyond(5), Beyond(10)));
        Assert.Equal(HoldCautions.OneSided, Of(1, By(5), By(10)));
        Assert.Equal(HoldCautions.OneSided, Of(2, Exact(5), Exact(6), Beyond(5, 1)));
        Assert.Equal(HoldCautions.OneSided, Of(2, Exact(5), Exact(6)));
        Assert.Equal(HoldCautions.NoSpread, Of(1, Exact(5), Exact(5)));
        Assert.Equal(HoldCautions.NoSpread, Of(1, Beyond(5), By(10)));
        Assert.Equal(HoldCautions.OneLength, Of(1, Beyond(5), By(5), By(5)));
        Assert.Equal(HoldCautions.NoSlope, Of(1, Beyond(5), By(5), By(5), Beyond(10), Beyond(10), By(10)));
        // Two groups: one spread is learnt from the first and borrowed by the second.
        Assert.NotNull(HoldFit.Fit(HoldLaw.LogLogistic, [Exact(5), Exact(8), Beyond(5, 1), By(5, 1)], 2).Curves);
    }

    [Fact]
    public void Fit_OutsideItsRange_Throws()
    {
        void Throws(HoldLaw law, GroupedHold hold, int groups) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => HoldFit.Fit(law, [hold], groups));
        Throws((HoldLaw)9, new(new(1, 2)), 1);
        Throws(HoldLaw.Weibull, new(new(1, 2)), 0);
        Throws(HoldLaw.Weibull, new(new(1, 2), 1), 1);
        Throws(HoldLaw.Weibull, new(new(2, 1)), 1);
        Throws(HoldLaw.Weibull, new(new(0, 0)), 1);
        Throws(HoldLaw.Weibull, new(new(double.NaN, null)), 1);
        Throws(HoldLaw.Weibull, new(new(1, double.PositiveInfinity)), 1);
    }

    private static List<GroupedHold> Grouped(params IReadOnlyList<HoldTime>[] groups) =>
        groups.SelectMany((g, i) => g.Select(h => new GroupedHold(HoldData.SpanOf(h), i))).ToList();

    private static double Plain(HoldLaw law, IEnumerable<GroupedHold> holds, double[] at) => holds.Sum(h =>
    {
        var s = Math.Exp(at[2]);
        double Held(double t) => t == 0 ? 1
            : law == HoldLaw.Weibull ? Math.Exp(-Math.Exp((Math.Log(t) - at[h.Group]) / s)) : 1 / (1 + Math.Exp((Math.Log(t) - at[h.Group]) / s));
        if (!h.Span.IsExact) return Math.Log(Held(h.Span.LowS) - (h.Span.HighS is { } high ? Held(high) : 0));
        var (z, t) = ((Math.Log(h.Span.LowS) - at[h.Group]) / s, h.Span.LowS);
        var density = law == HoldLaw.Weibull ? Math.Exp(z) * Held(t) : Held(t) * (1 - Held(t));
        return Math.Log(density / (s * t));
    });
}
