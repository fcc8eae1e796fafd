using System.Collections;
using CsCheck;
using Slantwise.Engines.Statistics;
using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Engines.Statistics.Holds;
using Slantwise.Engines.Statistics.Orders;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics;

/// <summary>A figure that cannot be computed is none, and a caution says why: no NaN and no infinity leaves an answer, however odd the data.</summary>
public sealed class FiniteNumbersTests
{
    // Few, alike, extreme: what breaks formulas.
    private static readonly Gen<double> Times = Gen.OneOf(Gen.Int[1, 3].Select(t => (double)t), OneOf<double>(1e-6, .5, 1e6));
    private static readonly Gen<int?> Owner = Gen.Int[0, 3].Select(p => p == 0 ? (int?)null : p);

    [Fact]
    public void Holds_AnyAnswer_HasNoNaN() => Gen.Select(Times, Gen.Bool, Owner).Select((t, fell, p) => new HoldTime(t, fell, p)).Array[0, 8].Sample(holds =>
    {
        Finite(KaplanMeier.Of(holds, .9));
        Finite(LogRank.Of([holds, holds.Take(3).ToArray(), []]));
    });

    [Fact]
    public void Spans_AnyAnswer_HasNoNaN() => Gen.Select(Times, Times, Gen.Int[0, 3], Owner).Select((t, wide, kind, p) =>
        new PupilSpan(kind switch { 0 => new(t, null), 1 => new(0, t), 2 => new(t, t), _ => new(t, t + wide) }, p)).Array[0, 8].Sample(spans =>
    {
        Finite(Turnbull.Fit(spans, .9));
        foreach (var law in Enum.GetValues<HoldLaw>())
        {
            var fit = HoldFit.Fit(law, spans.Select((s, i) => new GroupedHold(s.Span, i % 2, s.Pupil)).ToArray(), 2);
            Finite(fit);
            Assert.Equal(fit.Curves is null, (fit.Cautions & ~(HoldCautions.FewHolds | HoldCautions.FewPupils)) != 0);
            if (fit.Curves is not { } curves) continue;
            Finite(curves.ScaleOf(0));
            Finite(curves.Difference(1, 0));
            Finite(curves.Held(0, 5, .9));
            Finite(curves.TimeS(0, 1e-9));
        }
    });

    [Fact]
    public void Agreement_AnyAnswer_HasNoNaN() => Gen.OneOf(Gen.Int[0, 2], Gen.Const(0)).Array[9].Array[1, 4].Sample(pupils =>
    {
        var tables = pupils.Select(c => AgreementTable.Of(AgreementData(c))).ToArray();
        foreach (var weights in new[] { AgreementWeights.Identity(3), AgreementWeights.Quadratic(3), AgreementWeights.OfDisagreements(new[,] { { 0, 0, 1.0 }, { 0, 0, 0 }, { 1, 0, 0 } }) })
        {
            var all = JudgeAgreement.Of(tables, weights, .9);
            Finite(all);
            Assert.True(all.Kappa.ValueFraction is not null || all.Cautions != AgreementCautions.None, "No value, no reason.");
        }
        var counts = pupils.Select(c => (IReadOnlyList<int>)c.Take(3).ToArray()).ToArray();
        Finite(GwetAgreement.Of(RatingCounts.Of(counts, 3), .9));
        Finite(FleissKappa.Of(RatingCounts.Of(counts.Where(c => c.Sum() == 2).ToArray(), 3)));
        Finite(ObserverAgreement.Of(AgreementTable.Of(new[,] { { pupils[0][0], pupils[0][1] }, { pupils[0][2], pupils[0][3] } })));
    });

    [Fact]
    public void Alpha_AnyAnswer_HasNoNaN() =>
        Gen.Select(OneOf<double?>(null, 0, 1, 1e-200, 2e-200, 1e200, 5).Array[0, 3].Array[0, 5], Gen.Enum<RatingScale>()).Sample((units, scale) =>
        {
            var alpha = KrippendorffAlpha.Of(units, scale);
            Finite(alpha);
            Assert.True(alpha.AlphaFraction is not null || alpha.Cautions != AgreementCautions.None, "No value, no reason.");
        });

    [Fact]
    public void Predictions_AnyAnswer_HasNoNaN() => Gen.Select(OneOf<double>(0, 1e-12, .5, 1 - 1e-12, 1), Gen.Int[0, 3]).SelectMany((p, n) =>
        Gen.Int[0, n].Select(s => new Forecast(p, s, n))).Array[0, 6].Sample(forecasts =>
    {
        Finite(PredictionScores.Of(forecasts));
        Finite(BrierParts.Of(forecasts));
        Finite(BrierParts.Of(forecasts, [.25, .75]));
        Finite(CalibrationCurve.Of(forecasts));
        Finite(GoodmanKruskalGamma.Of(forecasts));
        var sets = forecasts.Where(f => f.TrialCount > 0).Select(f => new ExpectedSet(f.TrialCount - f.SuccessCount, f.SuccessCount, f.TrialCount, Math.Clamp(f.PredictedFraction, 1e-12, 1 - 1e-12))).ToArray();
        Finite(OptimismAndLuck.Of(sets));
        Finite(PooledBias.Given([sets, []], 4, .1));
    });

    [Fact]
    public void PooledBias_AnyAnswer_HasNoNaN() => Gen.Select(Gen.Int[0, 1], OneOf<double>(1e-9, .5, 1 - 1e-9)).Select((all, p) =>
        new ExpectedSet(all * 500, 0, 500, p)).Array[0, 3].Array[0, 3].Sample(pupils => Finite(PooledBias.Fit(pupils)), iter: 20);

    [Fact]
    public void Orders_AnyAnswer_HasNoNaN() => Gen.Select(Times, Times, Gen.Int[0, 2]).Array[0, 6].Sample(data =>
    {
        Finite(LearningCurve.Fit(data.Select(d => new PracticePoint(d.Item1, d.Item2)).ToArray()));
        Finite(ClassGrowth.Of(data.Select(d => new LessonTime(d.Item3, (int)Math.Min(d.Item1, 3), d.Item2)).ToArray(), .9));
        Finite(GuttmanOrder.Of(data.Select(d => (IReadOnlyList<bool?>)[d.Item1 > 1, d.Item3 == 0 ? null : d.Item2 > 1, null]).ToArray(), 3));
    });

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static int[,] AgreementData(int[] cells)
    {
        var table = new int[3, 3];
        for (var i = 0; i < 9; i++) table[i / 3, i % 3] = cells[i];
        return table;
    }

    /// <summary>Looks through an answer and all it is made of.</summary>
    private static void Finite(object? answer)
    {
        switch (answer)
        {
            case null or string or bool or int or long or Enum: return;
            case double number:
                Assert.True(double.IsFinite(number), $"{number}");
                return;
            case IEnumerable several:
                foreach (var each in several) Finite(each);
                return;
        }
        foreach (var property in answer.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0))
        {
            var value = property.GetValue(answer);
            if (value is double number) Assert.True(double.IsFinite(number), $"{property.Name} {number} in {answer}");
            else Finite(value);
        }
    }
}
