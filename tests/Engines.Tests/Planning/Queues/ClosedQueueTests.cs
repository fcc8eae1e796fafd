using CsCheck;
using Slantwise.Engines.Planning;
using Slantwise.Engines.Planning.Queues;

namespace Slantwise.Engines.Tests.Planning.Queues;

public sealed class ClosedQueueTests
{
    [Fact]
    public void Turns_TwoAtOnePlaceByHand_AlternateAndWait()
    {
        // By hand, turn 3 s, away 1 s: 0–3 first, 3–6 second (came at 0), the first is back at 4 and waits to 6.
        var turns = ClosedQueue.Turns(2, 1, (_, _) => 3, (_, _) => 1, 2, 100).ToList();
        Assert.Equal(
            [new(0, 0, 0, 0, 3), new(1, 0, 0, 3, 6), new(0, 1, 4, 6, 9), new(1, 1, 7, 9, 12)],
            turns);
    }

    [Fact]
    public void Turns_EqualTimes_FollowTheTwoTermRecursion() => Gen.Select(Gen.Int[1, 12], Gen.Int[1, 5], Gen.Int[1, 40], Gen.Int[0, 120]).Sample((n, c, busyS, awayS) =>
    {
        // With equal times the order never changes: a turn begins when the turn c before it has left its place and the pupil's own last one, n before, is over and away.
        var starts = new List<double>();
        for (var m = 0; m < 60; m++)
            starts.Add(Math.Max(m >= c ? starts[m - c] + busyS : 0, m >= n ? starts[m - n] + busyS + awayS : 0));
        Assert.Equal(starts, ClosedQueue.Turns(n, c, (_, _) => busyS, (_, _) => awayS, 1000, double.MaxValue).Take(60).Select(t => t.StartS));
    });

    [Fact]
    public void Turns_AnyTimes_KeepWorkOrderAndPlaces() => Varied.Sample(q =>
    {
        var turns = Run(q.N, q.C, q.Seed, 400);
        foreach (var (turn, i) in turns.Select((t, i) => (t, i)))
        {
            Assert.True(turn.StartS >= turn.ComesS && turn.FinishS > turn.StartS);
            if (i > 0) Assert.True(turns[i - 1].ComesS <= turn.ComesS && turns[i - 1].StartS <= turn.StartS, "First come, first served.");
            var atStart = turns.Where(t => t.StartS <= turn.StartS && t.FinishS > turn.StartS).ToList();
            Assert.True(atStart.Count <= q.C, "No more than places.");
            // Work is kept: who waits does so only while all places are taken.
            if (turn.StartS > turn.ComesS + 1e-9)
                Assert.Equal(q.C, turns.Count(t => t.StartS < turn.StartS && t.FinishS >= turn.StartS - 1e-9 && t.FinishS > turn.ComesS));
        }
        foreach (var own in turns.GroupBy(t => t.Who))
            foreach (var (before, after) in own.Zip(own.Skip(1))) Assert.True(after.ComesS >= before.FinishS && after.Turn == before.Turn + 1);
    });

    [Fact]
    public void Turns_AnyTimes_ObeyLittlesLaw() => Varied.Sample(q =>
    {
        // L = λW over a window whose end cuts no one off: number present, counted moment by moment, against times from coming to leaving, added up.
        var turns = Run(q.N, q.C, q.Seed, 300);
        var moments = turns.SelectMany(t => new[] { (AtS: t.ComesS, Step: 1), (AtS: t.FinishS, Step: -1) }).OrderBy(m => m.AtS).ThenBy(m => m.Step).ToList();
        double area = 0, atS = 0;
        var present = 0;
        foreach (var (momentS, step) in moments)
        {
            area += present * (momentS - atS);
            (atS, present) = (momentS, present + step);
        }
        Assert.Equal(turns.Sum(t => t.FinishS - t.ComesS), area, 1e-7 * area);
    });

    // Source: [GrossHarris1998] section 2.7 for the formula; its own checks stand in MachineRepairTests. The simulation is held within 4 of its own standard errors, from
    // 40 runs apart from each other; seeds are fixed, so the outcome is.
    [Theory]
    [InlineData(3, 1, 20, 30)]
    [InlineData(6, 1, 200, 20)]
    [InlineData(6, 2, 100, 40)]
    [InlineData(12, 5, 10, 40)]
    [InlineData(22, 3, 200, 20)]
    [InlineData(28, 10, 50, 30)]
    [InlineData(4, 4, 30, 30)]
    public void Turns_TimesWithoutMemory_AgreeWithTheMachineRepairModel(int n, int c, double awayS, double busyS)
    {
        const int runs = 40;
        var expected = MachineRepair.Of(n, c, awayS, busyS);
        var (perS, waitingS, chanceToWait) = (new double[runs], new double[runs], new double[runs]);
        for (var run = 0; run < runs; run++)
        {
            var draws = Enumerable.Range(0, n).Select(i => new SeededDraws(20261126, ((ulong)run << 16) | (uint)i)).ToArray();
            // Everybody comes at 0, which is not the long run: the first 40 cycles are left out.
            var warmS = 40 * (awayS + busyS * Math.Max(1, (double)n / c));
            var endS = warmS * 6;
            var turns = ClosedQueue.Turns(n, c, (i, _) => busyS * draws[i].NextExponential(), (i, _) => awayS * draws[i].NextExponential(), int.MaxValue, endS)
                .Where(t => t.StartS >= warmS).ToList();
            perS[run] = turns.Count / (endS - warmS);
            waitingS[run] = turns.Average(t => t.StartS - t.ComesS);
            chanceToWait[run] = turns.Average(t => t.StartS > t.ComesS ? 1.0 : 0);
        }
        AssertWithinError(expected.TurnsPerS, perS);
        AssertWithinError(expected.WaitingS, waitingS);
        // Who comes sees the others in their long run with one fewer (arrival theorem).
        if (n > c) AssertWithinError(MachineRepair.Of(n - 1, c, awayS, busyS).Chances.Skip(c).Sum(), chanceToWait);
        else Assert.All(waitingS, w => Assert.Equal(0, w));
    }

    private static void AssertWithinError(double expected, double[] runs)
    {
        var mean = runs.Average();
        var error = Math.Sqrt(runs.Sum(r => (r - mean) * (r - mean)) / (runs.Length - 1) / runs.Length);
        // An error near 0 would hide a missing spread: the means must also lie within 3 % of the formula.
        Assert.True(Math.Abs(mean - expected) <= 4 * error + 1e-12, $"{mean} is {Math.Abs(mean - expected) / error:F1} errors from {expected}.");
        Assert.True(Math.Abs(mean - expected) <= 0.03 * expected + 1e-12, $"{mean} is not within 3 % of {expected}.");
    }

    private static List<QueueTurn> Run(int n, int c, int seed, int endS)
    {
        var draws = Enumerable.Range(0, n).Select(i => new SeededDraws((ulong)seed, (ulong)i)).ToArray();
        return [.. ClosedQueue.Turns(n, c, (i, _) => 20 * draws[i].NextFactor(0.6), (i, _) => 15 * draws[i].NextExponential(), int.MaxValue, endS)];
    }

    private static Gen<(int N, int C, int Seed)> Varied { get; } = Gen.Select(Gen.Int[1, 9], Gen.Int[1, 4], Gen.Int[0, 1_000_000]);
}
