using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Slantwise.Engines.Statistics.Orders;

namespace Slantwise.Engines.Tests.Statistics.Orders;

public sealed class ClassGrowthTests
{
    private static readonly Gen<LessonTime[]> Times = Gen.Select(Gen.Int[0, 6], Gen.Int[1, 5], Gen.Int[1, 60]).Select((p, l, t) => new LessonTime(p, l, t / 2.0)).Array[1, 30];

    [Fact]
    public void Of_TwoPupilsByHand_IsTheMeanOfTheirLogs()
    {
        // By hand: 2 to 4 s and 8 to 16 s in one lesson: double. A third doubles in two lessons: slope ln 2/2 over squares of 2 against 1/2 each.
        var two = ClassGrowth.Of([new(1, 1, 2), new(1, 2, 4), new(2, 1, 8), new(2, 2, 16)], .9);
        Assert.Equal(Math.Log(2), two.GrowthNats!.Value, 1e-12);
        Assert.Equal(1, two.PerLessonFraction!.Value, 1e-12);
        Assert.Equal(0, two.ErrorNats!.Value, 1e-12);
        var three = ClassGrowth.Of([new(1, 1, 2), new(1, 2, 4), new(2, 1, 8), new(2, 2, 16), new(3, 1, 5), new(3, 3, 10)], .9);
        Assert.Equal((.5 + .5 + 2 / 2.0) / 3 * Math.Log(2), three.GrowthNats!.Value, 1e-12);
        Assert.Equal((3, 6, OrderCautions.FewPupils), (three.PupilCount, three.TimeCount, three.Cautions));
    }

    [Fact]
    public void Of_StrongPupilsAbsentAtFirst_DoesNotLookLikeGrowth()
    {
        // Nobody changes; the strong come only later. A mean over those present would triple.
        LessonTime[] times = [.. Enumerable.Range(0, 6).SelectMany(p => new LessonTime[] { new(p, 1, 4), new(p, 2, 4) }), new(8, 2, 40), new(8, 3, 40), new(9, 2, 50), new(9, 3, 50)];
        Assert.Equal(0, ClassGrowth.Of(times, .9).GrowthNats!.Value, 1e-12);
    }

    [Fact]
    public void Of_AnyTimes_AgreesWithOneInterceptAPupil() => Times.Sample(times =>
    {
        var growth = ClassGrowth.Of(times, .9);
        var pupils = times.GroupBy(t => t.Pupil).Where(g => g.Select(t => t.Lesson).Distinct().Count() > 1).Select(g => g.Key).ToList();
        Assert.Equal(pupils.Count, growth.PupilCount);
        if (pupils.Count == 0)
        {
            Assert.Equal((null, OrderCautions.NoData), (growth.GrowthNats, growth.Cautions));
            return;
        }
        // The plain second version: least squares with a column for each pupil and one for the lesson; and again without each pupil.
        double Slope(IReadOnlyList<int> kept)
        {
            var rows = times.Where(t => kept.Contains(t.Pupil)).ToList();
            var x = Matrix<double>.Build.Dense(rows.Count, kept.Count + 1, (r, c) => c == kept.Count ? rows[r].Lesson : rows[r].Pupil == kept[c] ? 1 : 0);
            return x.QR().Solve(Vector<double>.Build.DenseOfEnumerable(rows.Select(r => Math.Log(r.TimeS))))[kept.Count];
        }
        Assert.Equal(Slope(pupils), growth.GrowthNats!.Value, 1e-9);
        if (growth.ErrorNats is not { } error) return;
        var without = pupils.Select(p => Slope(pupils.Where(q => q != p).ToList())).ToList();
        Assert.Equal(Math.Sqrt((pupils.Count - 1.0) / pupils.Count * without.Sum(w => Math.Pow(w - without.Average(), 2))), error, 1e-9);
        Assert.InRange(growth.GrowthNats.Value, growth.LowNats!.Value, growth.HighNats!.Value);
    });

    [Fact]
    public void Of_EachPupilsTimesStretched_StaysTheSame() => Times.Sample(times =>
    {
        var stretched = times.Select(t => t with { TimeS = t.TimeS * (t.Pupil + 1) }).ToArray();
        var (one, other) = (ClassGrowth.Of(times, .9), ClassGrowth.Of(stretched, .9));
        Assert.Equal(one.GrowthNats ?? 0, other.GrowthNats ?? 0, 1e-9);
        Assert.Equal(one.ErrorNats ?? 0, other.ErrorNats ?? 0, 1e-9);
    });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ClassGrowth.Of([new(1, 1, 0)], .9));
        Assert.Throws<ArgumentOutOfRangeException>(() => ClassGrowth.Of([], 1));
        Assert.Null(ClassGrowth.Of([], .9).PerLessonFraction);
    }
}
