using CsCheck;
using Slantwise.Engines.Statistics.Holds;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Holds;

public sealed class TurnbullTests
{
    private static readonly Gen<HoldSpan> AnySpan = Gen.Select(Gen.Int[1, 12], Gen.Int[0, 4], Gen.Int[1, 6]).Select((t, kind, wide) =>
        kind switch { 0 => new HoldSpan(t, null), 1 => new(0, t), 2 => new(t, t), _ => new(t, t + wide) });

    [Fact]
    public void Fit_ExactAndStoppedHolds_IsKaplanAndMeiers() => HoldData.Any.Sample(holds =>
    {
        var (spans, steps) = (Turnbull.Fit(holds.Select(h => new PupilSpan(HoldData.SpanOf(h))).ToArray(), .9), KaplanMeier.Of(holds, .9));
        Assert.False(spans.Cautions.HasFlag(HoldCautions.NotConverged));
        foreach (var step in steps.Steps)
        {
            Assert.Equal(step.HeldFraction, spans.MostFraction(step.TimeS)!.Value, 1e-5);
            // After the last time seen the stopped ones may end at once: before it there is nothing to choose.
            if (step.TimeS < steps.Steps[^1].TimeS) Assert.Equal(step.HeldFraction, spans.LeastFraction(step.TimeS)!.Value, 1e-5);
        }
    });

    [Fact]
    public void Fit_SameHoldsWithPupils_HasKaplanAndMeiersErrors() => HoldData.Any.Sample(holds =>
    {
        if (holds.Length < 4) return;
        var owned = holds.Select((h, i) => h with { Pupil = i / 2 }).ToArray();
        var (spans, steps) = (Turnbull.Fit(owned.Select(h => new PupilSpan(HoldData.SpanOf(h), h.Pupil)).ToArray(), .9), KaplanMeier.Of(owned, .9));
        // Where the curve without a pupil ends early the two carry on differently; before the last fall's tail they agree.
        var safe = owned.Max(h => h.HeldS) is var last && owned.Where(h => h.HeldS == last).Select(h => h.Pupil).Distinct().Count() > 1;
        if (!safe) return;
        foreach (var step in spans.Steps.Where(s => s.ErrorFraction is not null))
            Assert.Equal(steps.Steps.Single(s => s.TimeS == step.ToS).ErrorFraction!.Value, step.ErrorFraction!.Value, 1e-4);
    });

    [Fact]
    public void Fit_JudgedHolds_IsTheBestFallingShares() => Gen.Select(Gen.Int[1, 6], Gen.Bool).Array[1, 40].Sample(judged =>
    {
        // Judged only, at a target: the shares that failed by target, pooled where they fall. The same neighbours are pooled elsewhere for predictions.
        var curve = Turnbull.Fit(judged.Select(j => new PupilSpan(j.Item2 ? new(j.Item1, null) : new(0, j.Item1))).ToArray(), .9);
        var pooled = CalibrationCurve.Of(judged.Select(j => new Forecast(j.Item1 / 10.0, j.Item2 ? 0 : 1, 1)).ToArray());
        Assert.False(curve.Cautions.HasFlag(HoldCautions.NotConverged));
        foreach (var block in pooled.Blocks)
        {
            foreach (var target in judged.Select(j => j.Item1).Where(t => t / 10.0 >= block.LowFraction && t / 10.0 <= block.HighFraction).Distinct())
                Assert.InRange(1 - block.ObservedFraction, curve.LeastFraction(target)!.Value - 1e-3, curve.MostFraction(target)!.Value + 1e-3);
        }
    });

    [Fact]
    public void Fit_AnySpans_NoOtherSharesAreLikelier() => AnySpan.Array[1, 15].Sample(spans =>
    {
        var curve = Turnbull.Fit(spans.Select(s => new PupilSpan(s)).ToArray(), .9);
        Assert.False(curve.Cautions.HasFlag(HoldCautions.NotConverged));
        var weights = curve.Steps.Select((s, i) => (Step: s, Share: (i == 0 ? 1 : curve.Steps[i - 1].HeldFraction) - s.HeldFraction)).ToList();
        Assert.Equal(1, weights.Sum(w => w.Share), 1e-9);
        // The plain second version of the likelihood: a span's chance is the share of the stretches that lie in it. A little taken from all and put on any one
        // time, in a stretch or not, must not make it larger.
        double Chance(HoldSpan s) => weights.Where(w => In(s, w.Step)).Sum(w => w.Share);
        foreach (var to in Enumerable.Range(0, 80).Select(q => q / 4.0))
        {
            var gain = spans.Average(s => (s.IsExact ? to == s.LowS : to > s.LowS && !(to > s.HighS)) ? 1 / Chance(s) : 0);
            Assert.True(gain <= 1 + 1e-5, $"{to} {gain}");
        }
        static bool In(HoldSpan s, SpanStep step) => s.IsExact ? step.FromS == s.LowS && step.ToS == s.HighS
            : step.FromS == step.ToS ? step.FromS > s.LowS && !(step.FromS > s.HighS)
            : step.FromS >= s.LowS && (s.HighS is null || step.ToS <= s.HighS);
    });

    [Fact]
    public void Fit_UntimedFallsAtOneTarget_KeepsTheShareThatReachedIt()
    {
        // By hand: of ten, four reached 10 s, two fell at 3 s, four fell untimed. Left out, the untimed would make it 4 of 6; the truth is 4 of 10.
        PupilSpan[] holds = [.. Enumerable.Repeat(new PupilSpan(new(10, null)), 4), new(new(3, 3)), new(new(3, 3)), .. Enumerable.Repeat(new PupilSpan(new(0, 10)), 4)];
        var curve = Turnbull.Fit(holds, .9);
        Assert.Equal(.4, curve.MostFraction(10)!.Value, 1e-6);
        // All that is known of when they fell is the two at 3 s: the likeliest curve falls there.
        Assert.Equal([(3.0, (double?)3.0), (10.0, null)], curve.Steps.Select(s => (s.FromS, s.ToS)));
        Assert.Equal((10, 6, HoldCautions.None), (curve.HoldCount, curve.FallenCount, curve.Cautions));
        Assert.InRange(.4, curve.Steps[0].LowFraction!.Value, curve.Steps[0].HighFraction!.Value);
        // The error of a share of ten strangers: leaving out one of ten, √(.4 · .6/9).
        Assert.Equal(Math.Sqrt(.24 / 9), curve.Steps[0].ErrorFraction!.Value, 1e-5);
    }

    [Fact]
    public void Fit_NothingToTell_SaysSo()
    {
        Assert.Equal(HoldCautions.NoHolds, Turnbull.Fit([new(new(0, null))], .9).Cautions);
        Assert.Null(Turnbull.Fit([], .9).MostFraction(3));
        var one = Turnbull.Fit([new(new(5, null), 1)], .9);
        Assert.Equal(HoldCautions.FewHolds | HoldCautions.FewPupils | HoldCautions.NobodyFell, one.Cautions);
        Assert.Equal((1.0, 0.0), (one.MostFraction(50)!.Value, one.LeastFraction(50)!.Value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Turnbull.Fit([new(new(5, 4))], .9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Turnbull.Fit([], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => one.MostFraction(-1));
    }
}
