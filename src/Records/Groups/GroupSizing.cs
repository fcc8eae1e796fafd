namespace Slantwise.Records.Groups;

/// <summary>How many groups are asked for: so many, or as many as it takes that none has more than so many pupils.</summary>
/// <param name="IsByPupils">Whether the number is pupils a group; else it is groups.</param>
/// <param name="Count">1 to <see cref="MostGroups"/>.</param>
public sealed record GroupSizing(bool IsByPupils, int Count)
{
    /// <summary>Groups there may be at most.</summary>
    public const int MostGroups = 30;

    /// <summary>What is asked where nobody said: groups of up to 4.</summary>
    public static GroupSizing Usual { get; } = new(true, 4);

    /// <summary>How many groups that is, never more than pupils nor than <see cref="MostGroups"/>, at least 1.</summary>
    /// <param name="pupils">0 or more.</param>
    public int GroupsFor(int pupils) => Math.Clamp(IsByPupils ? (pupils + Count - 1) / Math.Max(1, Count) : Count, 1, Math.Clamp(pupils, 1, MostGroups));
}
