namespace Slantwise.Engines.Planning.Groups;

/// <summary>Betters a division by moving and swapping blocks, at first also to worse ones, and keeps every wish met all along.</summary>
/// <remarks>Simulated annealing. Source: [Kirkpatrick1983].</remarks>
internal sealed class GroupSwaps(GroupProblem problem, int[] start)
{
    private readonly int[] _groupOf = [.. start];
    private readonly GroupSpread _spread = new(problem.Request);
    private readonly int[] _count = new int[problem.Request.Sizes.Count];
    private readonly int[] _supporters = new int[problem.Request.Sizes.Count];

    /// <summary>The best division met, and its differences within groups.</summary>
    public (int[] GroupOfBlock, double WithinSquares) Better(SeededDraws draws, int steps)
    {
        for (var b = 0; b < _groupOf.Length; b++) Put(b, _groupOf[b], 1);
        var sign = problem.Request.Goal == GroupGoal.Match ? 1 : -1;
        var now = sign * _spread.WithinSquares;
        var (best, bestCost) = ((int[])_groupOf.Clone(), now);
        // From a temperature that lets a typical swap pass to one that lets none.
        var (hot, cold) = (0.1 * _spread.TotalSquares / Math.Max(1, problem.Request.Pupils.Count) + 1e-9, 1e-7 * _spread.TotalSquares + 1e-12);
        for (var step = 0; step < steps; step++)
        {
            var temperature = hot * Math.Pow(cold / hot, (double)step / steps);
            var (a, b) = (draws.NextIndex(_groupOf.Length), draws.NextIndex(_groupOf.Length));
            var (from, to) = (_groupOf[a], _groupOf[b]);
            // Beside swaps with a pupil of another group, moves to any group: b's group, or an empty one.
            var isMove = draws.NextFraction() < 0.3;
            if (isMove) to = draws.NextIndex(_count.Length);
            if (from == to) continue;
            Move(a, to);
            if (!isMove) Move(b, from);
            var cost = sign * _spread.WithinSquares;
            var isTaken = Holds(a, isMove ? -1 : b, from, to) && (cost <= now || draws.NextFraction() < Math.Exp((now - cost) / temperature));
            if (!isTaken)
            {
                Move(a, from);
                if (!isMove) Move(b, to);
                continue;
            }
            now = cost;
            if (now >= bestCost - 1e-12) continue;
            bestCost = now;
            best = (int[])_groupOf.Clone();
        }
        return (best, sign * bestCost);
    }

    private bool Holds(int a, int b, int from, int to)
    {
        foreach (var group in new[] { from, to })
        {
            var size = problem.Request.Sizes[group];
            if (_count[group] < size.Least || _count[group] > size.Most || (problem.NeedsSupporter[group] && _supporters[group] == 0)) return false;
        }
        return Holds(a) && (b < 0 || Holds(b));
    }

    private bool Holds(int block)
    {
        var (own, group) = (problem.Blocks[block], _groupOf[block]);
        return (own.Fixed is null || own.Fixed == group) && !own.Apart.Any(o => _groupOf[o] == group);
    }

    private void Move(int block, int group)
    {
        Put(block, _groupOf[block], -1);
        _groupOf[block] = group;
        Put(block, group, 1);
    }

    private void Put(int block, int group, int sign)
    {
        var own = problem.Blocks[block];
        _count[group] += sign * own.Pupils.Length;
        _supporters[group] += sign * own.Supporters;
        foreach (var p in own.Pupils) _spread.Put(p, group, sign);
    }
}
