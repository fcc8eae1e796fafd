namespace Slantwise.Records.Tasks.Designs.Ladders;

/// <summary>Ways over a grid of places, each point with the key factor first. No point comes twice.</summary>
internal static class LadderPath
{
    /// <summary>The key factor alone, spread evenly from its easy to its hard end.</summary>
    public static IReadOnlyList<int[]> Classical(IReadOnlyList<int> steps, int levelCount) =>
        [.. Spread(Math.Min(levelCount, steps[0] + 1), steps[0]).Select(place => Point(steps.Count, place))];

    /// <summary>
    /// Every value of the key factor while there are levels for it; levels to spare stay at a value of the key factor and move a supporting one by a place,
    /// which goes back with the next value. Easy values get them first: that is where most have to find a way in.
    /// </summary>
    public static IReadOnlyList<int[]> SemiClassical(IReadOnlyList<int> steps, int levelCount)
    {
        var values = steps[0] + 1;
        if (levelCount <= values) return Classical(steps, levelCount);
        var points = new List<int[]>();
        var (fillers, room) = (steps.Skip(1).ToList(), 1 + steps.Skip(1).Sum());
        for (var value = 0; value < values; value++)
        {
            var point = Point(steps.Count, value);
            points.Add(point);
            var more = Math.Min((levelCount - value - 1) / values, room - 1);
            for (var n = 0; n < more; n++)
            {
                // Values take turns, so that both supporting factors are used and no step moves more than it must.
                var next = Enumerable.Range(0, fillers.Count).Select(i => 1 + ((value + i) % fillers.Count)).First(i => point[i] < steps[i]);
                point = [.. point];
                point[next]++;
                points.Add(point);
            }
        }
        return points;
    }

    /// <summary>One factor gets harder with each step and none ever eases: key and supporting factors take turns until there are steps enough.</summary>
    public static IReadOnlyList<int[]> Cumulative(IReadOnlyList<int> steps, int levelCount)
    {
        var turns = new List<int>();
        var taken = new int[steps.Count];
        for (var turn = 0; turns.Count < levelCount - 1 && turns.Count < steps.Sum(); turn++)
        {
            // Key, first, key, second: the key factor has every other turn.
            var factor = turn % 2 == 0 || steps.Count == 1 ? 0 : 1 + (turn / 2 % (steps.Count - 1));
            if (taken[factor] == steps[factor]) factor = Enumerable.Range(0, steps.Count).First(f => taken[f] < steps[f]);
            taken[factor]++;
            turns.Add(factor);
        }
        // As many turns as a factor has, spread over its whole span.
        var places = taken.Select((count, f) => count == 0 ? [] : Spread(count + 1, steps[f]).ToArray()).ToArray();
        var at = new int[steps.Count];
        var points = new List<int[]> { at };
        var used = new int[steps.Count];
        foreach (var factor in turns)
        {
            at = [.. at];
            at[factor] = places[factor][++used[factor]];
            points.Add(at);
        }
        return points;
    }

    private static IEnumerable<int> Spread(int count, int steps) => count == 1
        ? [0]
        : Enumerable.Range(0, count).Select(i => (int)Math.Round((double)i * steps / (count - 1), MidpointRounding.AwayFromZero));

    private static int[] Point(int length, int first)
    {
        var point = new int[length];
        point[0] = first;
        return point;
    }
}
