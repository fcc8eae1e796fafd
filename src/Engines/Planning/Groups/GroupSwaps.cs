namespace Slantwise.Engines.Planning.Groups;

/// <summary>Betters a division by moving and exchanging blocks, at first also to worse ones, and keeps every wish met all along.</summary>
/// <remarks>Simulated annealing. Source: [Kirkpatrick1983].</remarks>
internal sealed class GroupSwaps
{
    private readonly GroupProblem _problem;
    private readonly SeededDraws _draws;
    private readonly int[] _groupOf;
    private readonly GroupSpread _spread;
    private readonly int[] _count;
    private readonly int[] _supporters;
    private readonly List<int> _moved = [];
    private readonly List<int> _there = [];

    public GroupSwaps(GroupProblem problem, int[] start, SeededDraws draws)
    {
        (_problem, _draws, _groupOf, _spread) = (problem, draws, [.. start], new(problem.Request));
        (_count, _supporters) = (new int[problem.Request.Sizes.Count], new int[problem.Request.Sizes.Count]);
        for (var b = 0; b < _groupOf.Length; b++) Put(b, _groupOf[b], 1);
    }

    /// <summary>The best division met, and its differences within groups.</summary>
    public (int[] GroupOfBlock, double WithinSquares) Better(int steps)
    {
        var sign = _problem.Request.Goal == GroupGoal.Match ? 1 : -1;
        var now = sign * _spread.WithinSquares;
        var (best, bestCost) = ((int[])_groupOf.Clone(), now);
        // From a temperature that lets a typical exchange pass to one that lets none.
        var (hot, cold) = (0.5 * _spread.TotalSquares / Math.Max(1, _problem.Request.Pupils.Count) + 1e-9, 1e-5 * _spread.TotalSquares / Math.Max(1, _problem.Request.Pupils.Count) + 1e-12);
        var cooling = Math.Pow(cold / hot, 1.0 / steps);
        var temperature = hot;
        for (var step = 0; step < steps; step++, temperature *= cooling)
        {
            var a = _draws.NextIndex(_groupOf.Length);
            var (from, to) = (_groupOf[a], _draws.NextIndex(_count.Length));
            if (from == to || _problem.Blocks[a].Fixed is not null || !Exchange(a, from, to)) continue;
            var cost = sign * _spread.WithinSquares;
            if (!Holds(from, to) || (cost > now && _draws.NextFraction() >= Math.Exp((now - cost) / temperature)))
            {
                foreach (var b in _moved) Move(b, from + to - _groupOf[b]);
                continue;
            }
            now = cost;
            if (now >= bestCost - 1e-12) continue;
            bestCost = now;
            best = (int[])_groupOf.Clone();
        }
        return (best, sign * bestCost);
    }

    // Blocks differ in size: a pair goes against two single ones, or moves alone where sizes allow.
    private bool Exchange(int a, int from, int to)
    {
        _moved.Clear();
        _moved.Add(a);
        _there.Clear();
        for (var b = 0; b < _groupOf.Length; b++)
            if (_groupOf[b] == to && _problem.Blocks[b].Fixed is null) _there.Add(b);

        var size = _problem.Blocks[a].Pupils.Length;
        var (room, spare) = (_problem.Request.Sizes[to].Most - _count[to], _count[from] - _problem.Request.Sizes[from].Least);
        // How many must come back at least, and may at most; one of these, so that moves and exchanges both happen.
        var (least, most) = (Math.Max(0, Math.Max(size - room, size - spare)), size + _problem.Request.Sizes[from].Most - _count[from]);
        var back = least >= most ? least : least + _draws.NextIndex(Math.Min(most, size) - Math.Min(least, size) + 1);
        while (back > 0 && _there.Count > 0)
        {
            var i = _draws.NextIndex(_there.Count);
            var b = _there[i];
            _there[i] = _there[^1];
            _there.RemoveAt(_there.Count - 1);
            if (_problem.Blocks[b].Pupils.Length > back) continue;
            back -= _problem.Blocks[b].Pupils.Length;
            _moved.Add(b);
        }
        if (back > 0) return false;
        foreach (var b in _moved) Move(b, from + to - _groupOf[b]);
        return true;
    }

    private bool Holds(int from, int to) => Holds(from) && Holds(to) && _moved.TrueForAll(b => Array.TrueForAll(_problem.Blocks[b].Apart, o => _groupOf[o] != _groupOf[b]));

    private bool Holds(int group)
    {
        var size = _problem.Request.Sizes[group];
        return _count[group] >= size.Least && _count[group] <= size.Most && (!_problem.NeedsSupporter[group] || _supporters[group] > 0);
    }

    private void Move(int block, int group)
    {
        Put(block, _groupOf[block], -1);
        _groupOf[block] = group;
        Put(block, group, 1);
    }

    private void Put(int block, int group, int sign)
    {
        var own = _problem.Blocks[block];
        _count[group] += sign * own.Pupils.Length;
        _supporters[group] += sign * own.Supporters;
        foreach (var p in own.Pupils) _spread.Put(p, group, sign);
    }
}
