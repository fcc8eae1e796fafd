namespace Slantwise.Engines.Planning.Queues;

/// <summary>The long run of a closed queue: so many who come back again and again, so many places, times without a memory.</summary>
/// <param name="Chances">Index k: the chance that k are at the places or waiting for one, 0 to everybody.</param>
/// <param name="PresentCount">How many are at the places or waiting, on average.</param>
/// <param name="WaitingCount">How many are waiting, on average.</param>
/// <param name="BusyCount">How many places are in use, on average.</param>
/// <param name="TurnsPerS">How many turns end a second.</param>
/// <param name="PresentS">From coming to the end of the turn, on average.</param>
/// <param name="WaitingS">From coming to the begin of the turn, on average.</param>
/// <remarks>
/// The machine-repair model M/M/c//N. Chances multiply up from the balance between neighbouring states; times follow from counts by Little's law.
/// Sources: [GrossHarris1998] section 2.7; [Little1961].
/// </remarks>
public sealed record MachineRepair(
    IReadOnlyList<double> Chances, double PresentCount, double WaitingCount, double BusyCount, double TurnsPerS, double PresentS, double WaitingS)
{
    /// <summary>The long run of a closed queue.</summary>
    /// <param name="population">How many come back again and again, 1 to 10,000.</param>
    /// <param name="places">Places, 1 or more; more than the population change nothing.</param>
    /// <param name="awayS">Mean time between a turn and coming again, above 0.</param>
    /// <param name="busyS">Mean time of a turn, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A population not of 1 to 10,000; fewer than 1 place; a mean time that is not above 0 or not finite.</exception>
    public static MachineRepair Of(int population, int places, double awayS, double busyS)
    {
        if (population is < 1 or > 10_000) throw new ArgumentOutOfRangeException(nameof(population), population, "1 to 10,000 come back again and again.");
        if (places < 1) throw new ArgumentOutOfRangeException(nameof(places), places, "There is 1 place or more.");
        if (!(awayS > 0 && double.IsFinite(awayS))) throw new ArgumentOutOfRangeException(nameof(awayS), awayS, "A mean time is above 0 seconds and finite.");
        if (!(busyS > 0 && double.IsFinite(busyS))) throw new ArgumentOutOfRangeException(nameof(busyS), busyS, "A mean time is above 0 seconds and finite.");

        // In logs, so that a whole school at one place does not overflow.
        var logs = new double[population + 1];
        for (var k = 1; k <= population; k++)
            logs[k] = logs[k - 1] + Math.Log((population - k + 1) * busyS / (Math.Min(k, places) * awayS));
        var top = logs.Max();
        var chances = logs.Select(l => Math.Exp(l - top)).ToArray();
        var total = chances.Sum();
        for (var k = 0; k <= population; k++) chances[k] /= total;

        double present = 0, waiting = 0, busy = 0;
        for (var k = 0; k <= population; k++)
        {
            present += k * chances[k];
            waiting += Math.Max(0, k - places) * chances[k];
            busy += Math.Min(k, places) * chances[k];
        }
        var perS = busy / busyS;
        return new(chances, present, waiting, busy, perS, present / perS, waiting / perS);
    }
}
