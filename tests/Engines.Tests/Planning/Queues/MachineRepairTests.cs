using CsCheck;
using Slantwise.Engines.Planning.Queues;

namespace Slantwise.Engines.Tests.Planning.Queues;

public sealed class MachineRepairTests
{
    // Source: [Taha2017] example 18.6-8 and figure 18.9, as quoted in a public repository's tests (the book not seen): 22 machines, each
    // failing at a rate of .5 an hour, repaired at 5. The book's program cuts the fourth digit off, so a whole one of it is tolerated (counts: ten).
    [Theory]
    [InlineData(1, 4.9980, 0.0004, 12.0040, 11.0044, 2.4018, 2.2018)]
    [InlineData(2, 8.8161, 0.0564, 4.3677, 2.6045, 0.4954, 0.2954)]
    [InlineData(3, 9.7670, 0.1078, 2.4660, 0.5128, 0.2525, 0.0525)]
    [InlineData(4, 9.9500, 0.1199, 2.1001, 0.1102, 0.2111, 0.0111)]
    public void Of_MachinesOfTaha_GivesTheTable(int repairers, double perHour, double none, double present, double waiting, double presentHours, double waitingHours)
    {
        var queue = MachineRepair.Of(22, repairers, 2 * 3600, 3600 / 5.0);
        Assert.Equal(perHour, queue.TurnsPerS * 3600, 1e-4);
        Assert.Equal(none, queue.Chances[0], 1e-4);
        Assert.Equal(present, queue.PresentCount, 1e-3);
        Assert.Equal(waiting, queue.WaitingCount, 1e-3);
        Assert.Equal(presentHours, queue.PresentS / 3600, 1e-4);
        Assert.Equal(waitingHours, queue.WaitingS / 3600, 1e-4);
    }

    // Source: [Anderson2012] section 11.9, six machines, as quoted in a public repository's tests (the book not seen); four digits printed.
    [Fact]
    public void Of_MachinesOfAnderson_GivesTheBook()
    {
        var one = MachineRepair.Of(6, 1, 20 * 3600, 2 * 3600);
        Assert.Equal(0.4845, one.Chances[0], 5e-5);
        Assert.Equal(0.3297, one.WaitingCount, 5e-5);
        Assert.Equal(0.8451, one.PresentCount, 5e-5);
        Assert.Equal(1.279, one.WaitingS / 3600, 5e-4);
        Assert.Equal(3.279, one.PresentS / 3600, 5e-4);
        Assert.Equal(0.0834, MachineRepair.Of(6, 2, 20 * 3600, 2 * 3600).WaitingS / 3600, 5e-5);
    }

    // Source: [Canadilla2019] its own test file: rates 8 and 2, five places, twelve who come back.
    [Fact]
    public void Of_QueueOfThePackage_GivesItsTest()
    {
        var queue = MachineRepair.Of(12, 5, 1 / 8.0, 1 / 2.0);
        Assert.Equal(1.075013, queue.PresentS, 5e-7);
        Assert.Equal(10.75, queue.PresentCount, 5e-3);
        Assert.Equal(5.7501, queue.WaitingCount, 1e-4);
        Assert.Equal(0.2647059, MachineRepair.Of(2, 1, 1 / 0.25, 1 / 4.0).PresentS, 5e-8);
    }

    [Fact]
    public void Of_TwoAtOnePlaceByHand_GivesTheFractions()
    {
        // By hand, busy = away = 1 s: weights 1, 2, 2, so chances 1/5, 2/5, 2/5.
        var queue = MachineRepair.Of(2, 1, 1, 1);
        Assert.Equal([0.2, 0.4, 0.4], queue.Chances.Select(c => Math.Round(c, 15)));
        Assert.Equal(1.2, queue.PresentCount, 1e-14);
        Assert.Equal(0.8, queue.TurnsPerS, 1e-14);
        Assert.Equal(0.5, queue.WaitingS, 1e-14);
    }

    [Fact]
    public void Of_AnyQueue_AgreesWithTheFactorialsOfTheTextbook() => Queues.Sample(q =>
    {
        // The plain second version: N! / (N − k)! · r^k / (k! or c! c^(k−c)). Source: [GrossHarris1998] section 2.7 (from memory).
        var ratio = q.BusyS / q.AwayS;
        double Factorial(int n) => Enumerable.Range(1, n).Aggregate(1.0, (a, b) => a * b);
        var weights = Enumerable.Range(0, q.N + 1).Select(k =>
            Factorial(q.N) / Factorial(q.N - k) * Math.Pow(ratio, k) / (k <= q.C ? Factorial(k) : Factorial(q.C) * Math.Pow(q.C, k - q.C))).ToArray();
        var queue = MachineRepair.Of(q.N, q.C, q.AwayS, q.BusyS);
        for (var k = 0; k <= q.N; k++) Assert.Equal(weights[k] / weights.Sum(), queue.Chances[k], 1e-12);
    });

    [Fact]
    public void Of_AnyQueue_ObeysLittlesLawAndKeepsWork() => Queues.Sample(q =>
    {
        var queue = MachineRepair.Of(q.N, q.C, q.AwayS, q.BusyS);
        Assert.Equal(1, queue.Chances.Sum(), 1e-12);
        // Who is not at the places is away: turns begin as often as people come back.
        Assert.Equal((q.N - queue.PresentCount) / q.AwayS, queue.TurnsPerS, 1e-9 * queue.TurnsPerS);
        Assert.Equal(queue.PresentCount, queue.WaitingCount + queue.BusyCount, 1e-9);
        Assert.Equal(queue.PresentS, queue.WaitingS + q.BusyS, 1e-9 * queue.PresentS);
        Assert.True(MachineRepair.Of(q.N, q.C + 1, q.AwayS, q.BusyS).WaitingS <= queue.WaitingS + 1e-12);
    });

    [Theory]
    [InlineData(0, 1, 1, 1)]
    [InlineData(10_001, 1, 1, 1)]
    [InlineData(1, 0, 1, 1)]
    [InlineData(1, 1, 0, 1)]
    [InlineData(1, 1, 1, double.NaN)]
    [InlineData(1, 1, 1, double.PositiveInfinity)]
    public void Of_OutsideItsRange_Throws(int population, int places, double awayS, double busyS) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MachineRepair.Of(population, places, awayS, busyS));

    [Fact]
    public void Of_TenThousandAtOnePlace_StaysFinite() => Assert.Equal(1 / 3.0, MachineRepair.Of(10_000, 1, 1, 3).TurnsPerS, 1e-12);

    private static Gen<(int N, int C, double AwayS, double BusyS)> Queues { get; } =
        Gen.Select(Gen.Int[1, 30], Gen.Int[1, 12], Gen.Double[0.5, 200], Gen.Double[0.5, 200]);
}
