namespace Slantwise.Engines.Planning.Groups;

/// <summary>Looks through all divisions that meet a problem's wishes, block by block, the one with fewest open groups first.</summary>
internal sealed class GroupTree
{
    private const int FirstNodes = 250;

    private readonly GroupProblem _problem;
    private readonly GroupSpread _spread;
    private readonly int[] _count;
    private readonly int[] _supporters;
    private readonly int[] _groupOfBlock;
    private readonly int[] _openOfSize;
    private readonly int[] _tieBreak;
    private readonly int[][] _groupOrder;
    private readonly GroupGoal _goal;
    private int _openPupils;
    private int _openSupportingBlocks;
    private int _nodesLeft;
    private int[]? _best;
    private double _bestCost = double.PositiveInfinity;

    private GroupTree(GroupProblem problem, GroupGoal goal, SeededDraws draws, int nodes)
    {
        (_problem, _goal, _nodesLeft) = (problem, goal, nodes);
        var groups = problem.Request.Sizes.Count;
        (_count, _supporters) = (new int[groups], new int[groups]);
        _groupOfBlock = [.. Enumerable.Repeat(-1, problem.Blocks.Length)];
        _tieBreak = [.. Enumerable.Range(0, problem.Blocks.Length)];
        draws.Shuffle(_tieBreak);
        _groupOrder = [.. problem.Blocks.Select(_ =>
        {
            var order = Enumerable.Range(0, groups).ToArray();
            draws.Shuffle(order);
            return order;
        })];
        _openPupils = problem.Request.Pupils.Count;
        _openSupportingBlocks = problem.Blocks.Count(b => b.Supporters > 0);
        _openOfSize = new int[problem.Blocks.Select(b => b.Pupils.Length).Append(1).Max() + 1];
        foreach (var block in problem.Blocks) _openOfSize[block.Pupils.Length]++;
        _spread = new(problem.Request);
    }

    /// <summary>A division, or none where there is none; unknown where the nodes did not suffice.</summary>
    /// <remarks>
    /// Begun anew in another order with twice the nodes: an early bad step can cost a whole search what another order finds at once.
    /// Source: [GomesSelmanKautz1998].
    /// </remarks>
    public static (int[]? GroupOfBlock, bool IsSettled) Any(GroupProblem problem, ulong purpose, int nodes)
    {
        for (var limit = FirstNodes; ; limit *= 2)
        {
            var tree = new GroupTree(problem, GroupGoal.Any, new(problem.Request.Seed, (purpose << 32) | (uint)limit), limit);
            tree.Go();
            var isSettled = tree._best is not null || tree._nodesLeft > 0;
            if (isSettled || limit >= nodes) return (tree._best, isSettled);
        }
    }

    /// <summary>The best division, and whether all were looked through.</summary>
    public static (int[]? GroupOfBlock, bool IsSettled) Best(GroupProblem problem, SeededDraws draws, int nodes)
    {
        var tree = new GroupTree(problem, problem.Request.Goal, draws, nodes);
        tree.Go();
        return (tree._best, tree._nodesLeft > 0);
    }

    private void Go()
    {
        if (--_nodesLeft <= 0 || (_goal == GroupGoal.Any && _best is not null) || !CanFill()) return;
        // Within groups differences only grow as pupils join them; between groups they may shrink again.
        if (_goal == GroupGoal.Match && _best is not null && _spread.WithinSquares >= _bestCost - 1e-12) return;
        var block = Next(out var open);
        if (block < 0)
        {
            var cost = _goal == GroupGoal.Match ? _spread.WithinSquares : _goal == GroupGoal.Mix ? -_spread.WithinSquares : 0;
            if (cost >= _bestCost - 1e-12) return;
            (_bestCost, _best) = (cost, [.. _groupOfBlock]);
            return;
        }
        if (open == 0) return;
        foreach (var group in _groupOrder[block])
        {
            if (!IsOpen(block, group)) continue;
            Put(block, group, 1);
            Go();
            Put(block, group, -1);
        }
    }

    private bool CanFill()
    {
        int needed = 0, room = 0, withoutSupporter = 0;
        for (var g = 0; g < _count.Length; g++)
        {
            var size = _problem.Request.Sizes[g];
            needed += Math.Max(0, size.Least - _count[g]);
            room += size.Most - _count[g];
            if (_problem.NeedsSupporter[g] && _supporters[g] == 0)
            {
                if (_count[g] >= size.Most) return false;
                withoutSupporter++;
            }
        }
        if (needed > _openPupils || room < _openPupils || withoutSupporter > _openSupportingBlocks) return false;
        // Blocks of s or more need s places beside each other: seven pairs do not fit into six groups of three.
        for (var s = 2; s < _openOfSize.Length; s++)
        {
            var blocks = 0;
            for (var t = s; t < _openOfSize.Length; t++) blocks += _openOfSize[t];
            if (blocks == 0) break;
            for (var g = 0; g < _count.Length; g++) blocks -= (_problem.Request.Sizes[g].Most - _count[g]) / s;
            if (blocks > 0) return false;
        }
        return true;
    }

    private int Next(out int fewest)
    {
        var best = -1;
        fewest = int.MaxValue;
        for (var b = 0; b < _groupOfBlock.Length; b++)
        {
            if (_groupOfBlock[b] >= 0) continue;
            var open = 0;
            for (var g = 0; g < _count.Length && open <= fewest; g++)
                if (IsOpen(b, g)) open++;
            if (best >= 0 && (open, -_problem.Blocks[b].Pupils.Length, -_problem.Blocks[b].Apart.Length, _tieBreak[b])
                .CompareTo((fewest, -_problem.Blocks[best].Pupils.Length, -_problem.Blocks[best].Apart.Length, _tieBreak[best])) >= 0) continue;
            (best, fewest) = (b, open);
        }
        return best;
    }

    private bool IsOpen(int b, int group)
    {
        var block = _problem.Blocks[b];
        if (block.Fixed is { } place && place != group) return false;
        if (_count[group] + block.Pupils.Length > _problem.Request.Sizes[group].Most) return false;
        if (_count[group] == 0 && _problem.Twin[group] != group)
        {
            // Of groups that differ in nothing only the first empty one: the others would give the same groups under other numbers.
            for (var h = _problem.Twin[group]; h < group; h++)
                if (_count[h] == 0 && _problem.Twin[h] == _problem.Twin[group]) return false;
        }
        foreach (var other in block.Apart)
            if (_groupOfBlock[other] == group) return false;
        return true;
    }

    private void Put(int b, int group, int sign)
    {
        var block = _problem.Blocks[b];
        _groupOfBlock[b] = sign > 0 ? group : -1;
        _count[group] += sign * block.Pupils.Length;
        _supporters[group] += sign * block.Supporters;
        _openPupils -= sign * block.Pupils.Length;
        _openOfSize[block.Pupils.Length] -= sign;
        if (block.Supporters > 0) _openSupportingBlocks -= sign;
        foreach (var p in block.Pupils) _spread.Put(p, group, sign);
    }
}
