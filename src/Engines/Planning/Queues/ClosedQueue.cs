namespace Slantwise.Engines.Planning.Queues;

/// <summary>One pass of a closed queue, turn by turn: first come, first served; who comes at the same moment goes by number.</summary>
/// <remarks>
/// When a turn begins its end and the next coming are known, so everybody's next coming is always known and the earliest of them is the next to
/// be served: no list of events is needed. Comings are taken in order of time, since nobody comes again before the turn began.
/// </remarks>
internal static class ClosedQueue
{
    /// <summary>The turns in the order in which they begin.</summary>
    /// <param name="population">1 or more; all come at 0.</param>
    /// <param name="places">1 or more.</param>
    /// <param name="busyS">How long the turn of someone takes: who, and which of their turns from 0. Above 0.</param>
    /// <param name="awayS">How long someone is away after that turn; 0 or more.</param>
    /// <param name="turnsEach">Nobody takes more turns than this.</param>
    /// <param name="endS">No turn begins at or after this.</param>
    public static IEnumerable<QueueTurn> Turns(
        int population, int places, Func<int, int, double> busyS, Func<int, int, double> awayS, int turnsEach, double endS)
    {
        var comings = new PriorityQueue<(int Who, int Turn), (double AtS, int Who)>(population);
        var free = new PriorityQueue<int, (double AtS, int Place)>(places);
        for (var i = 0; i < population; i++) comings.Enqueue((i, 0), (0, i));
        for (var p = 0; p < Math.Min(places, population); p++) free.Enqueue(p, (0, p));

        while (comings.TryDequeue(out var next, out var coming))
        {
            free.TryPeek(out var place, out var ready);
            var startS = Math.Max(coming.AtS, ready.AtS);
            if (startS >= endS) yield break;
            free.Dequeue();
            var finishS = startS + busyS(next.Who, next.Turn);
            free.Enqueue(place, (finishS, place));
            yield return new(next.Who, next.Turn, coming.AtS, startS, finishS);
            if (next.Turn + 1 < turnsEach) comings.Enqueue((next.Who, next.Turn + 1), (finishS + awayS(next.Who, next.Turn), next.Who));
        }
    }
}
