using CsCheck;
using Slantwise.Engines.Statistics.Orders;

namespace Slantwise.Engines.Tests.Statistics.Orders;

public sealed class GuttmanOrderTests
{
    private static readonly Gen<bool?[][]> Classes = Gen.Int[2, 6].SelectMany(k =>
        Gen.Int[0, 5].Select(x => x == 0 ? (bool?)null : x < 4).Array[k].Array[1, 15]);

    [Fact]
    public void Of_TenPupilsByHand_GivesErrorsMarginsAndScalability()
    {
        // By hand: 11011, 10100 and 01100 have one pass out of place each, two errors each: 1 − 6/50. Passed 9 8 7 4 2 of 10, so the
        // commoner answers are 9 8 7 6 8 of 50; (.88 − .76)/(1 − .76) = 1/2.
        var order = Of("11111", "11110", "11100", "11000", "10000", "11011", "10100", "11100", "11110", "01100");
        Assert.Equal((10, 50, 6), (order.PupilCount, order.AnswerCount, order.ErrorCount));
        Assert.Equal(.88, order.ReproducibilityFraction!.Value, 1e-15);
        Assert.Equal(.76, order.MarginalFraction!.Value, 1e-15);
        Assert.Equal(.5, order.ScalabilityFraction!.Value, 1e-15);
        Assert.Equal([new(10, 9, 1), new(10, 8, 1), new(10, 7, 3), new(10, 4, 0), new(10, 2, 1)], order.Levels);
        Assert.Equal(new LevelPair(0, 1, 10, 2, 1), order.Neighbours[0]);
        Assert.Equal(new LevelPair(2, 3, 10, 4, 1), order.Neighbours[2]);
        // By hand: 4 against 1 of 5: 2 · (1 + 5)/32.
        Assert.Equal(12 / 32.0, order.Neighbours[2].ChanceFraction, 1e-15);
        Assert.Equal(OrderCautions.None, order.Cautions);
        // By hand, all with five answers: seven pupils without errors and three with two, so the error is that of a mean of ten:
        // errors a pupil have mean .6, sum of squares about it 8.4, √(8.4/90)/5.
        Assert.Equal(Math.Sqrt(8.4 / 90) / 5, order.ErrorFraction!.Value, 1e-12);
    }

    [Fact]
    public void Of_LevelsNotTried_AsksOnlyOfThoseThatWere()
    {
        // By hand: 1.0.1 passed two of three tried; the two easiest tried are levels 1 and 3, so levels 3 and 5 are errors.
        var order = Of("1.0.1", "1...0");
        Assert.Equal((2, 5, 2), (order.PupilCount, order.AnswerCount, order.ErrorCount));
        Assert.Equal(new LevelPair(0, 1, 0, 0, 0), order.Neighbours[0]);
        Assert.Equal(1, order.Neighbours[0].ChanceFraction);
        Assert.Equal(OrderCautions.FewPupils, order.Cautions);
        Assert.Equal(OrderCautions.FewPupils, Of("10..", "0.1.").Cautions);
        Assert.Equal(OrderCautions.FewPupils | OrderCautions.MostlyUntried, Of("10..", "0...").Cautions);
        Assert.Equal(OrderCautions.FewPupils | OrderCautions.MostlyUntried, Of("1....", ".0...").Cautions & (OrderCautions.FewPupils | OrderCautions.MostlyUntried));
    }

    [Fact]
    public void Of_PerfectOrder_ForetellsEverything() => Gen.Int[0, 5].Array[2, 20].Sample(scores =>
    {
        var order = GuttmanOrder.Of(scores.Select(s => (IReadOnlyList<bool?>)Enumerable.Range(0, 5).Select(l => (bool?)(l < s)).ToArray()).ToArray(), 5);
        Assert.Equal(1, order.ReproducibilityFraction);
        Assert.All(order.Neighbours, n => Assert.Equal(0, n.AgainstCount));
        if (order.ScalabilityFraction is { } scalability) Assert.Equal(1, scalability);
        else Assert.True(order.Cautions.HasFlag(OrderCautions.NothingToOrder));
    });

    [Fact]
    public void Of_AnyClass_AgreesWithIdealPatternsWrittenOut() => Classes.Sample(pupils =>
    {
        var k = pupils[0].Length;
        var order = GuttmanOrder.Of(pupils, k);
        // The plain second version: each pupil's ideal pattern as text, compared letter by letter; margins level by level.
        int n = 0, e = 0;
        var commoner = 0;
        foreach (var pupil in pupils)
        {
            var seen = string.Concat(pupil.Where(a => a is not null).Select(a => a!.Value ? '1' : '0'));
            var ideal = new string('1', seen.Count(c => c == '1')).PadRight(seen.Length, '0');
            n += seen.Length;
            e += seen.Zip(ideal).Count(p => p.First != p.Second);
        }
        for (var level = 0; level < k; level++)
        {
            var answers = pupils.Select(p => p[level]).OfType<bool>().ToList();
            commoner += answers.GroupBy(a => a).Select(g => g.Count()).DefaultIfEmpty(0).Max();
        }
        Assert.Equal((n, e), (order.AnswerCount, order.ErrorCount));
        Assert.Equal(0, e % 2);
        if (n == 0)
        {
            Assert.Equal((null, OrderCautions.NoData), (order.ReproducibilityFraction, order.Cautions));
            return;
        }
        Assert.Equal((double)commoner / n, order.MarginalFraction!.Value, 1e-15);
        if (order.ScalabilityFraction is { } scalability)
            Assert.Equal((order.ReproducibilityFraction!.Value - order.MarginalFraction.Value) / (1 - order.MarginalFraction.Value), scalability, 1e-12);
        else Assert.Equal(n, commoner);
        Assert.Equal(e, order.Levels.Sum(l => l.ErrorCount));
        Assert.Equal(order.PupilCount < 2, order.ErrorFraction is null);
    });

    [Fact]
    public void Of_ClassTwice_SaysTheSameWithLessError() => Classes.Sample(pupils =>
    {
        if (pupils.Count(p => p.Any(a => a is not null)) < 2) return;
        var (once, twice) = (GuttmanOrder.Of(pupils, pupils[0].Length), GuttmanOrder.Of([.. pupils, .. pupils], pupils[0].Length));
        Assert.Equal(once.ReproducibilityFraction!.Value, twice.ReproducibilityFraction!.Value, 1e-12);
        Assert.True(twice.ErrorFraction <= once.ErrorFraction + 1e-12);
    });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => GuttmanOrder.Of([[true]], 1));
        Assert.Throws<ArgumentException>(() => GuttmanOrder.Of([[true, false], [true]], 2));
    }

    private static GuttmanOrder Of(params string[] pupils) => GuttmanOrder.Of(
        pupils.Select(p => (IReadOnlyList<bool?>)p.Select(c => c == '.' ? (bool?)null : c == '1').ToArray()).ToArray(), pupils[0].Length);
}
