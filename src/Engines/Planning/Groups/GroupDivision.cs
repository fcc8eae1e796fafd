namespace Slantwise.Engines.Planning.Groups;

/// <summary>A class in groups, and what could not be met.</summary>
/// <param name="GroupOf">The group of each pupil, in the order of the pupils; none where sizes and fixed places alone cannot be kept, or where none was found.</param>
/// <param name="UnmetWishes">Wishes left out, as places in the request's list: as few as possible where <see cref="IsFewestProved"/>.</param>
/// <param name="Conflicts">Why: each one a smallest set of wishes that contradicts itself, and of which something was left out; one empty set where there are no groups.</param>
/// <param name="BetweenFraction">The share of the differences in experience that lies between groups, 0 to 1; none where it is not known.</param>
/// <param name="IsFewestProved">Whether no division meets more wishes; where false the search was cut off.</param>
/// <param name="IsBestProved">Whether no division that meets the same wishes is nearer to the goal; where false it is the best of those met.</param>
public sealed record GroupDivision(
    IReadOnlyList<int>? GroupOf, IReadOnlyList<int> UnmetWishes, IReadOnlyList<GroupConflict> Conflicts, double? BetweenFraction, bool IsFewestProved, bool IsBestProved)
{
    private const int NodesToSettle = 64_000;
    private const int NodesToProve = 400_000;
    private const int BlocksToProve = 12;
    private const int Starts = 6;
    private const int StepsAStart = 30_000;
    private const int ConflictsAtMost = 60;

    /// <summary>Divides a class.</summary>
    /// <param name="request">Within the ranges of its properties.</param>
    /// <exception cref="ArgumentOutOfRangeException">A property outside its range; a pupil or group that is not there.</exception>
    /// <exception cref="ArgumentException">A wish about one pupil and the same.</exception>
    /// <remarks>
    /// Wishes that cannot all be met are found by leaving out one after the other; the fewest to leave out hit every such set, and are looked for anew as long as sets turn up.
    /// Source: [ReiterDeKleer1987]. Within the wishes kept, all divisions are looked through where blocks are few, else the best of several starts is bettered by swaps.
    /// </remarks>
    public static GroupDivision Of(GroupRequest request)
    {
        request.Check();
        var (conflicts, ways) = (new List<GroupConflict>(), new WaysOut(request));
        var kept = Enumerable.Range(0, request.Wishes.Count).ToList();
        while (!CanMeet(request, kept, out _) && conflicts.Count < ConflictsAtMost)
        {
            var conflict = Smallest(request, kept);
            conflicts.Add(conflict);
            if (conflict.Wishes.Count == 0) return new(null, [], conflicts, null, conflict.IsProved, conflict.IsProved);
            kept = [.. Enumerable.Range(0, request.Wishes.Count).Except(FewestHits.Of([.. conflicts.Select(c => ways.Of(c.Wishes))]))];
        }
        // As many as hit all sets must be left out at least: if each set is certain and the rest can be met, they are the fewest.
        var isProved = conflicts.TrueForAll(c => c.IsProved) && conflicts.Count < ConflictsAtMost;
        if (!isProved)
        {
            kept = Refilled(request, kept);
            if (!CanMeet(request, kept, out _)) return new(null, [], conflicts, null, false, false);
        }
        var kernel = GroupProblem.Of(request, kept.Select(w => request.Wishes[w]))!;
        var (blocks, isBest) = Best(kernel);
        var groupOf = new int[request.Pupils.Count];
        for (var b = 0; b < blocks.Length; b++)
            foreach (var p in kernel.Blocks[b].Pupils) groupOf[p] = blocks[b];
        var check = GroupCheck.Of(request, groupOf);
        return new(groupOf, check.UnmetWishes, [.. conflicts.Where(c => c.Wishes.Intersect(check.UnmetWishes).Any())], check.BetweenFraction, isProved, isBest);
    }

    private static bool CanMeet(GroupRequest request, IEnumerable<int> wishes, out bool isSettled)
    {
        isSettled = true;
        if (GroupProblem.Of(request, wishes.Select(w => request.Wishes[w])) is not { } problem) return false;
        (var found, isSettled) = GroupTree.Any(problem, 0, NodesToSettle);
        return found is not null;
    }

    // What stays is proved to be possible without any one of it, since a division was found; that all of it is not, as the last search for it says.
    private static GroupConflict Smallest(GroupRequest request, List<int> wishes)
    {
        var left = new List<int>(wishes);
        CanMeet(request, left, out var isProved);
        // The later wish goes first, so that what was wished first is left out last.
        foreach (var wish in Enumerable.Reverse(wishes))
        {
            if (CanMeet(request, left.Where(w => w != wish), out var isSettled)) continue;
            left.Remove(wish);
            isProved = isSettled;
        }
        return new(left, isProved);
    }

    // Cut off, more may have been left out than need be, or too little: from nothing on, wish by wish, what can be met beside the others. What was kept goes first.
    private static List<int> Refilled(GroupRequest request, List<int> kept)
    {
        var filled = CanMeet(request, kept, out _) ? kept : [];
        foreach (var wish in kept.Except(filled).Concat(Enumerable.Range(0, request.Wishes.Count).Except(kept)).ToList())
            if (CanMeet(request, filled.Append(wish), out _)) filled.Add(wish);
        filled.Sort();
        return filled;
    }

    private static (int[] GroupOfBlock, bool IsProved) Best(GroupProblem problem)
    {
        var request = problem.Request;
        if (request.Goal == GroupGoal.Any) return (GroupTree.Any(problem, 0, NodesToSettle).GroupOfBlock!, true);
        if (problem.Blocks.Length <= BlocksToProve)
        {
            var (found, isSettled) = GroupTree.Best(problem, new(request.Seed, 1), NodesToProve);
            if (found is not null && isSettled) return (found, true);
        }
        var sign = request.Goal == GroupGoal.Match ? 1 : -1;
        int[]? best = null;
        var bestCost = double.PositiveInfinity;
        for (var start = 0; start < Starts; start++)
        {
            if (GroupTree.Any(problem, (ulong)start, NodesToSettle).GroupOfBlock is not { } first) continue;
            var (division, within) = new GroupSwaps(problem, first, new(request.Seed, 1000 + (ulong)start)).Better(StepsAStart);
            if (sign * within >= bestCost - 1e-12) continue;
            (best, bestCost) = (division, sign * within);
        }
        // The first start was settled already: it is the one by which the wishes were found to be possible.
        var total = new GroupSpread(request).TotalSquares;
        var isPerfect = request.Goal == GroupGoal.Match ? bestCost < 1e-12 : -bestCost > total - 1e-12;
        return (best!, isPerfect);
    }
}
