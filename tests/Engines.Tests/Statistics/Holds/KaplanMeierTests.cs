using CsCheck;
using Slantwise.Engines.Statistics.Holds;

namespace Slantwise.Engines.Tests.Statistics.Holds;

public sealed class KaplanMeierTests
{
    [Fact]
    public void Of_EventTiedWithLoss_LossStillAtRisk()
    {
        // By hand: at 2 s one of four, 3/4; at 3 s one of three (the tied loss counts), 3/4 · 2/3 = 1/2; at 5 s the last.
        var curve = KaplanMeier.Of([new(3, false), new(2, true), new(3, true), new(5, true)], 0.95);
        Assert.Equal([0.75, 0.5, 0.0], curve.Steps.Select(s => s.HeldFraction), (a, b) => Math.Abs(a - b) < 1e-15);
        Assert.Equal([4, 3, 1], curve.Steps.Select(s => s.AtRiskCount));
        // At a half exactly from 3 to 5 s: the middle.
        Assert.Equal(4, curve.Median.MedianS);
    }

    [Fact]
    public void Of_ExampleOfKaplanAndMeier_GivesTheirEstimates()
    {
        // Source: [KaplanMeier1958] numerical example, from memory.
        var curve = KaplanMeier.Of(
            [new(.8, true), new(1, false), new(2.7, false), new(3.1, true), new(5.4, true), new(7, false), new(9.2, true), new(12.1, false)], 0.95);
        foreach (var (time, share) in new[] { (.8, .875), (3.1, .7), (5.4, .525), (9.2, .2625) })
            Assert.Equal(share, curve.HeldFraction(time)!.Value, 1e-12);
        Assert.Null(curve.HeldFraction(12.2));
    }

    // Source: [Therneau2023] survfit of R's survival 3.5.3; the files name the commands. Ten to twelve digits are printed.
    [Theory]
    [InlineData("gehan")]
    [InlineData("aml")]
    public void Of_DataOfR_AgreesInSharesErrorsAndLogLogBands(string data)
    {
        foreach (var row in GoldenTable.Rows($"Holds/km_{data}.csv"))
        {
            var step = KaplanMeier.Of(HoldData.Of(data, row["stratum"]), 0.95).Steps.Single(s => s.TimeS == row.Number("time"));
            Assert.Equal((row.Count("n_risk"), row.Count("n_event"), row.Count("n_censor")), (step.AtRiskCount, step.FallenCount, step.StoppedCount));
            Assert.Equal(row.Number("surv")!.Value, step.HeldFraction, 1e-10);
            if (step.HeldFraction == 0)
            {
                Assert.Null(step.ErrorFraction);
                continue;
            }
            Assert.Equal(row.Number("greenwood_se")!.Value, step.ErrorFraction!.Value, 1e-9);
            Assert.Equal(row.Number("lo_log-log")!.Value, step.LowFraction!.Value, 1e-9);
            Assert.Equal(row.Number("hi_log-log")!.Value, step.HighFraction!.Value, 1e-9);
        }
    }

    // Source: [Therneau2023] summary(survfit(conf.type = "log-log")).
    [Fact]
    public void Median_DataOfR_AgreesWithItsLimits()
    {
        foreach (var row in GoldenTable.Rows("Holds/km_medians.csv").Where(r => r["conf"] == "log-log"))
        {
            var curve = KaplanMeier.Of(HoldData.Of(row["data"], row["stratum"]), 0.95);
            Assert.Equal(new MedianHold(row.Number("median"), row.Number("lo"), row.Number("hi")), curve.Median);
            Assert.Equal((row.Count("n"), row.Count("events")), (curve.HoldCount, curve.FallenCount));
        }
    }

    [Fact]
    public void Of_SixMercaptopurine_GivesThePrintedTable()
    {
        // Source: [Freireich1963]; four digits as printed in textbooks, from memory. The 35-week means: R's survival, print(rmean = 35).
        var treated = KaplanMeier.Of(HoldData.Treated, 0.95);
        foreach (var (week, share, error) in new[] { (6, .8571, .0764), (7, .8067, .0869), (10, .7529, .0963), (13, .6902, .1068), (16, .6275, .1141), (22, .5378, .1282), (23, .4482, .1346) })
        {
            Assert.Equal(share, treated.HeldFraction(week)!.Value, 0.5e-4);
            Assert.Equal(error, treated.Steps.Single(s => s.TimeS == week).ErrorFraction!.Value, 0.5e-4);
        }
        Assert.Equal(23.287395, treated.MeanS(35)!.Value, 1e-6);
        Assert.Equal(8.666667, KaplanMeier.Of(HoldData.Controls, 0.95).MeanS(35)!.Value, 1e-6);
        Assert.Null(treated.MeanS(36));
    }

    [Fact]
    public void Of_NoOneStopped_IsTheShareStillHeld() => HoldData.Any.Sample(holds =>
    {
        var all = holds.Select(h => h with { HasFallen = true }).ToArray();
        foreach (var step in KaplanMeier.Of(all, 0.9).Steps)
        {
            // The plain second version: without censoring the share is a count, and Greenwood's error the binomial one.
            var share = all.Count(h => h.HeldS > step.TimeS) / (double)all.Length;
            Assert.Equal(share, step.HeldFraction, 1e-12);
            if (step.ErrorFraction is { } error) Assert.Equal(Math.Sqrt(share * (1 - share) / all.Length), error, 1e-12);
        }
    });

    [Fact]
    public void Of_AnyHolds_SendsTheStoppedOnesWeightToTheRight() => HoldData.Any.Sample(holds =>
    {
        // A second road to the same curve. Source: [Efron1967]: each hold weighs 1/n, and a stopped one hands its weight to those after it.
        var order = holds.OrderBy(h => h.HeldS).ThenByDescending(h => h.HasFallen).ToArray();
        var weight = Enumerable.Repeat(1.0 / order.Length, order.Length).ToArray();
        for (var i = 0; i < order.Length - 1; i++)
        {
            if (order[i].HasFallen) continue;
            for (var j = i + 1; j < order.Length; j++) weight[j] += weight[i] / (order.Length - 1 - i);
            weight[i] = 0;
        }
        foreach (var step in KaplanMeier.Of(holds, 0.9).Steps)
        {
            var gone = order.Zip(weight).Where(p => p.First.HasFallen && p.First.HeldS <= step.TimeS).Sum(p => p.Second);
            Assert.Equal(1 - gone, step.HeldFraction, 1e-12);
        }
    });

    [Fact]
    public void Of_AnyHolds_FallsWithinItsBands() => HoldData.Any.Sample(holds =>
    {
        var curve = KaplanMeier.Of(holds, 0.9);
        var before = 1.0;
        foreach (var step in curve.Steps)
        {
            Assert.InRange(step.HeldFraction, 0, before);
            before = step.HeldFraction;
            Assert.Equal(step.HeldFraction is > 0 and < 1, step.LowFraction is not null);
            if (step.LowFraction is not { } low) continue;
            Assert.InRange(step.HeldFraction, low, step.HighFraction!.Value);
            Assert.InRange(low, 0, 1);
            Assert.InRange(step.HighFraction.Value, 0, 1);
        }
        Assert.Equal(holds.Length, curve.Steps.Sum(s => s.FallenCount + s.StoppedCount));
        var slower = KaplanMeier.Of(holds.Select(h => h with { HeldS = 3 * h.HeldS }).ToArray(), 0.9);
        Assert.Equal(curve.Median.MedianS * 3, slower.Median.MedianS);
    });

    [Fact]
    public void Of_SeveralHoldsAPupil_ErrorsComeFromLeavingOutPupils() => HoldData.Any.Sample(holds =>
    {
        var owned = holds.Select((h, i) => h with { Pupil = i / 3 }).ToArray();
        var curve = KaplanMeier.Of(owned, 0.9);
        var pupils = owned.Select(h => h.Pupil).Distinct().ToList();
        Assert.Equal((holds.Length > pupils.Count, pupils.Count), (curve.IsByPupil, curve.PupilCount));
        if (!curve.IsByPupil) return;
        foreach (var step in curve.Steps.Where(s => s.ErrorFraction is not null))
        {
            // The plain second version: the whole curve again without each pupil, carried on where it ends early.
            var without = pupils.Select(p => KaplanMeier.Of(owned.Where(h => h.Pupil != p).ToArray(), 0.9))
                .Select(c => c.Steps.Where(s => s.TimeS <= step.TimeS).Select(s => s.HeldFraction).DefaultIfEmpty(1).Last()).ToList();
            var mean = without.Average();
            var error = pupils.Count < 2 ? 0 : Math.Sqrt((pupils.Count - 1.0) / pupils.Count * without.Sum(w => (w - mean) * (w - mean)));
            Assert.Equal(error, step.ErrorFraction!.Value, 1e-12);
        }
    });

    [Fact]
    public void Of_EachHoldTwiceBySamePupil_IsNoSurerThanOnce()
    {
        // The same 21 pupils seen twice know no more: leaving out pupils sees it, Greenwood's formula on 42 holds does not.
        var twice = HoldData.Controls.SelectMany((h, i) => new[] { h with { Pupil = i }, h with { Pupil = i } }).ToArray();
        var once = KaplanMeier.Of(HoldData.Controls, 0.95).Steps.Single(s => s.TimeS == 8).ErrorFraction!.Value;
        var byPupil = KaplanMeier.Of(twice, 0.95).Steps.Single(s => s.TimeS == 8).ErrorFraction!.Value;
        var greenwood = KaplanMeier.Of(twice.Select(h => h with { Pupil = null }).ToArray(), 0.95).Steps.Single(s => s.TimeS == 8).ErrorFraction!.Value;
        Assert.Equal(once * Math.Sqrt(21.0 / 20), byPupil, 1e-12);
        Assert.Equal(once / Math.Sqrt(2), greenwood, 1e-12);
    }

    [Fact]
    public void Cautions_OfThinData_SayWhy()
    {
        Assert.Equal(HoldCautions.NoHolds, KaplanMeier.Of([], 0.9).Cautions);
        var held = KaplanMeier.Of([new(5, false), new(5, false), new(10, false)], 0.9);
        Assert.Equal(HoldCautions.FewHolds | HoldCautions.NobodyFell | HoldCautions.MixedTargets, held.Cautions);
        Assert.Equal(new MedianHold(null, null, null), held.Median);
        Assert.All(held.Steps, s => Assert.True(s is { HeldFraction: 1, LowFraction: null, IsThin: true }));
        Assert.Equal(HoldCautions.FewHolds | HoldCautions.FewPupils, KaplanMeier.Of([new(5, true, 1), new(4, true, 1)], 0.9).Cautions);
        HoldCautions OfPupils(int count) => KaplanMeier.Of(HoldData.Controls.Select((h, i) => h with { Pupil = i % count }).ToArray(), 0.9).Cautions;
        Assert.Equal((HoldCautions.FewPupils, HoldCautions.None), (OfPupils(5), OfPupils(6)));
        Assert.Equal(HoldCautions.MixedTargets, KaplanMeier.Of(HoldData.Treated, 0.9).Cautions);
        Assert.Equal(HoldCautions.None, KaplanMeier.Of(HoldData.NistUnits, 0.9).Cautions);
    }

    [Theory]
    [InlineData(-1, 0.9)]
    [InlineData(double.NaN, 0.9)]
    [InlineData(5, 1)]
    public void Of_OutsideItsRange_Throws(double heldS, double confidence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => KaplanMeier.Of([new(heldS, true)], confidence));
}
