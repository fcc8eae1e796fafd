namespace Slantwise.Engines.Planning.Groups;

/// <summary>A wish: met where possible, and named where not.</summary>
/// <param name="Kind">What it asks.</param>
/// <param name="First">The first pupil; the group where a supporter is asked for.</param>
/// <param name="Second">The second pupil, another than the first; 0 where a supporter is asked for.</param>
public readonly record struct GroupWish(GroupWishKind Kind, int First, int Second)
{
    /// <summary>Two pupils in one group.</summary>
    /// <param name="first">A place in the list of pupils.</param>
    /// <param name="second">Another.</param>
    public static GroupWish Together(int first, int second) => new(GroupWishKind.Together, first, second);

    /// <summary>Two pupils in different groups.</summary>
    /// <param name="first">A place in the list of pupils.</param>
    /// <param name="second">Another.</param>
    public static GroupWish Apart(int first, int second) => new(GroupWishKind.Apart, first, second);

    /// <summary>At least one pupil who may support in a group.</summary>
    /// <param name="group">The group, from 0.</param>
    public static GroupWish SupporterIn(int group) => new(GroupWishKind.SupporterIn, group, 0);

    /// <summary>Whether a division meets it.</summary>
    internal bool IsMet(IReadOnlyList<GroupPupil> pupils, IReadOnlyList<int> groupOf)
    {
        if (Kind == GroupWishKind.Together) return groupOf[First] == groupOf[Second];
        if (Kind == GroupWishKind.Apart) return groupOf[First] != groupOf[Second];
        for (var p = 0; p < pupils.Count; p++)
            if (groupOf[p] == First && pupils[p].MaySupport) return true;
        return false;
    }
}
