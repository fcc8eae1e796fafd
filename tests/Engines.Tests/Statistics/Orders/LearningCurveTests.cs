using CsCheck;
using Slantwise.Engines.Statistics.Orders;

namespace Slantwise.Engines.Tests.Statistics.Orders;

public sealed class LearningCurveTests
{
    private static readonly Gen<PracticePoint[]> Points = Gen.Select(Gen.Int[1, 400], Gen.Int[1, 100]).Select((n, t) => new PracticePoint(n / 8.0, t / 4.0)).Array[3, 15];

    // Both fits to the twenty invented times beside this test were computed in a second program; six digits.
    [Fact]
    public void Fit_TwentyTimes_AgreesInBothWays()
    {
        var curve = LearningCurve.Fit(GoldenTable.Rows("Orders/practice.csv").Select(r => new PracticePoint(r.Count("trial"), r.Number("seconds")!.Value)).ToArray());
        Assert.Equal(12.890254, curve.InSeconds!.Value.FirstS, 1e-5);
        Assert.Equal(-.369844, curve.InSeconds.Value.ExponentNats, 1e-6);
        Assert.Equal(Math.Exp(2.484301), curve.InLogs!.Value.FirstS, 1e-5);
        Assert.Equal(-.332962, curve.InLogs.Value.ExponentNats, 1e-6);
        Assert.Equal(.028442, curve.InLogs.Value.ExponentErrorNats, 1e-6);
        Assert.Equal((20, OrderCautions.None), (curve.PointCount, curve.Cautions));
    }

    [Fact]
    public void Fit_HalfWithEachDoubling_IsFoundExactly()
    {
        // By hand: 8, 4, 2, 1 s after 1, 2, 4, 8 tries.
        var curve = LearningCurve.Fit([new(1, 8), new(2, 4), new(4, 2), new(8, 1)]);
        foreach (var law in new[] { curve.InSeconds!.Value, curve.InLogs!.Value })
        {
            Assert.Equal(8, law.FirstS, 1e-9);
            Assert.Equal(-1, law.ExponentNats, 1e-9);
            Assert.Equal(-.5, law.PerDoublingFraction, 1e-9);
            Assert.Equal(0, law.ExponentErrorNats, 1e-9);
            Assert.Equal(.5, law.TimeS(16), 1e-9);
        }
        Assert.Equal(OrderCautions.FewPoints, curve.Cautions);
    }

    [Fact]
    public void Fit_AnyPoints_NoOtherLawMissesLess() => Points.Sample(points =>
    {
        var curve = LearningCurve.Fit(points);
        if (points.Select(p => p.PracticeCount).Distinct().Count() < 2)
        {
            Assert.Null(curve.InLogs);
            return;
        }
        var logs = curve.InLogs!.Value;
        double Logs(double first, double exponent) => points.Sum(p => Math.Pow(Math.Log(p.TimeS / first) - exponent * Math.Log(p.PracticeCount), 2));
        double Seconds(double first, double exponent) => points.Sum(p => Math.Pow(p.TimeS - first * Math.Pow(p.PracticeCount, exponent), 2));
        foreach (var (a, b) in new (double, double)[] { (1.01, 0), (.99, 0), (1, .01), (1, -.01) })
        {
            Assert.True(Logs(logs.FirstS * a, logs.ExponentNats + b) >= Logs(logs.FirstS, logs.ExponentNats) - 1e-9);
            if (curve.InSeconds is { } law)
                Assert.True(Seconds(law.FirstS * a, law.ExponentNats + b) >= Seconds(law.FirstS, law.ExponentNats) * (1 - 1e-9));
        }
        Assert.Equal(curve.InSeconds is null, curve.Cautions.HasFlag(OrderCautions.NotConverged));
        if (curve.InSeconds is { } found)
        {
            // Never worse than where the search began.
            Assert.True(Seconds(found.FirstS, found.ExponentNats) <= Seconds(logs.FirstS, logs.ExponentNats) * (1 + 1e-12));
        }
    });

    [Fact]
    public void Fit_TimesThatFallUnevenly_AreAlwaysFound() => Gen.Select(Gen.Double[0, 1.5], Gen.Double[.5, 1.5].Array[5, 20]).Sample((fall, noise) =>
    {
        var curve = LearningCurve.Fit(noise.Select((e, i) => new PracticePoint(i + 1, 10 * Math.Pow(i + 1, -fall) * e)).ToArray());
        Assert.NotNull(curve.InSeconds);
        Assert.NotNull(curve.InLogs);
        Assert.Equal(OrderCautions.None, curve.Cautions);
    });

    [Fact]
    public void Fit_TimesInMinutes_MoveOnlyTheFirst() => Points.Sample(points =>
    {
        var (one, other) = (LearningCurve.Fit(points), LearningCurve.Fit(points.Select(p => p with { TimeS = p.TimeS * 60 }).ToArray()));
        if (one.InLogs is not { } logs) return;
        Assert.Equal(logs.ExponentNats, other.InLogs!.Value.ExponentNats, 1e-7 * Math.Max(1, Math.Abs(logs.ExponentNats)));
        Assert.Equal(logs.FirstS * 60, other.InLogs.Value.FirstS, 1e-6 * logs.FirstS * 60);
    });

    [Fact]
    public void Fit_TooLittleOrOutsideItsRange_SaysSo()
    {
        Assert.Equal(OrderCautions.NoData, LearningCurve.Fit([]).Cautions);
        Assert.Null(LearningCurve.Fit([new(1, 5), new(2, 4)]).InLogs);
        Assert.Null(LearningCurve.Fit([new(2, 5), new(2, 4), new(2, 3)]).InSeconds);
        Assert.Throws<ArgumentOutOfRangeException>(() => LearningCurve.Fit([new(0, 5)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LearningCurve.Fit([new(1, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PowerLaw(5, -1, 0).TimeS(0));
    }
}
