namespace Slantwise.Engines.Planning.Groups;

/// <summary>What to leave out so that a set of wishes no longer contradicts itself.</summary>
/// <remarks>
/// Groups of one size without fixed places differ in nothing but whether a supporter is asked for. If of ten such groups eight cannot all have one, no other eight can: instead of meeting every
/// eight of ten, the last three are left out at once. Which of them is all the same.
/// </remarks>
internal sealed class WaysOut
{
    private readonly Dictionary<int, int[]> _alike = [];

    public WaysOut(GroupRequest request)
    {
        var isFixed = request.Locks.Select(l => l.Group).ToHashSet();
        var supporters = Enumerable.Range(0, request.Wishes.Count).Where(w => request.Wishes[w].Kind == GroupWishKind.SupporterIn).ToList();
        // A group that is asked for twice weighs twice, and is not like the others.
        var single = supporters.GroupBy(w => request.Wishes[w].First).Where(g => g.Count() == 1 && !isFixed.Contains(g.Key)).Select(g => g.First());
        foreach (var alike in single.GroupBy(w => request.Sizes[request.Wishes[w].First]).Select(g => g.ToArray()))
            foreach (var wish in alike) _alike[wish] = alike;
    }

    /// <summary>The ways: of each one all its wishes are to be left out.</summary>
    /// <param name="conflict">Wishes that contradict each other.</param>
    public IReadOnlyList<int[]> Of(IReadOnlyList<int> conflict)
    {
        var ways = conflict.Where(w => !_alike.ContainsKey(w)).Select(w => new[] { w }).ToList();
        foreach (var alike in conflict.Where(_alike.ContainsKey).GroupBy(w => _alike[w]))
            ways.Add(alike.Key[^(alike.Key.Length - alike.Count() + 1)..]);
        return ways;
    }
}
