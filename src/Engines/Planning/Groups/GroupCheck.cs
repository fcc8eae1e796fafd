namespace Slantwise.Engines.Planning.Groups;

/// <summary>What a division keeps and what it does not: after a pupil was moved by hand, or of any answer.</summary>
/// <param name="UnmetWishes">Places in the request's list of wishes, in its order.</param>
/// <param name="BrokenLocks">Places in the request's list of locks.</param>
/// <param name="WrongSizes">Groups with too few or too many pupils.</param>
/// <param name="BetweenFraction">The share of the differences in experience that lies between groups, 0 (all groups alike) to 1 (all alike within); none where experience is not known or does not differ.</param>
public sealed record GroupCheck(IReadOnlyList<int> UnmetWishes, IReadOnlyList<int> BrokenLocks, IReadOnlyList<int> WrongSizes, double? BetweenFraction)
{
    /// <summary>Checks a division.</summary>
    /// <param name="request">Within the ranges of its properties.</param>
    /// <param name="groupOf">The group of each pupil, in the order of the pupils.</param>
    /// <exception cref="ArgumentException">Not one group for each pupil; a wish about one pupil and the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A group or pupil that is not there; something else outside its range.</exception>
    public static GroupCheck Of(GroupRequest request, IReadOnlyList<int> groupOf)
    {
        request.Check();
        if (groupOf.Count != request.Pupils.Count) throw new ArgumentException("Each pupil has a group.", nameof(groupOf));
        foreach (var group in groupOf)
            if (group < 0 || group >= request.Sizes.Count) throw new ArgumentOutOfRangeException(nameof(groupOf), group, "A group is a place in the list of sizes.");

        var counts = new int[request.Sizes.Count];
        foreach (var group in groupOf) counts[group]++;
        return new(
            [.. Enumerable.Range(0, request.Wishes.Count).Where(w => !request.Wishes[w].IsMet(request.Pupils, groupOf))],
            [.. Enumerable.Range(0, request.Locks.Count).Where(l => groupOf[request.Locks[l].Pupil] != request.Locks[l].Group)],
            [.. Enumerable.Range(0, counts.Length).Where(g => counts[g] < request.Sizes[g].Least || counts[g] > request.Sizes[g].Most)],
            GroupSpread.BetweenFraction(request, groupOf));
    }
}
