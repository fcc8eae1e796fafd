namespace Slantwise.Engines.Planning.Groups;

/// <summary>How many pupils a group may have.</summary>
/// <param name="Least">The fewest, 0 or more.</param>
/// <param name="Most">The most, not below the fewest.</param>
public readonly record struct GroupSize(int Least, int Most)
{
    /// <summary>So many groups, as even as can be: sizes differ by one at most.</summary>
    /// <param name="pupils">0 or more.</param>
    /// <param name="groups">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Pupils below 0 or fewer than 1 group.</exception>
    public static IReadOnlyList<GroupSize> Even(int pupils, int groups)
    {
        if (pupils < 0) throw new ArgumentOutOfRangeException(nameof(pupils), pupils, "There are 0 pupils or more.");
        if (groups < 1) throw new ArgumentOutOfRangeException(nameof(groups), groups, "There is 1 group or more.");
        return Enumerable.Repeat(new GroupSize(pupils / groups, (pupils + groups - 1) / groups), groups).ToArray();
    }
}
