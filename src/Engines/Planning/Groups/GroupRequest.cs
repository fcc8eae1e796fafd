namespace Slantwise.Engines.Planning.Groups;

/// <summary>A class to be divided into groups.</summary>
public sealed record GroupRequest
{
    /// <summary>The pupils, at most 200; wishes and locks name them by their place here.</summary>
    public required IReadOnlyList<GroupPupil> Pupils { get; init; }

    /// <summary>The groups, 1 to 100; sizes are kept, whatever is wished.</summary>
    public required IReadOnlyList<GroupSize> Sizes { get; init; }

    /// <summary>Wishes, at most 400, each of the same weight; of two equal ones both count.</summary>
    public IReadOnlyList<GroupWish> Wishes { get; init; } = [];

    /// <summary>Fixed places.</summary>
    public IReadOnlyList<GroupLock> Locks { get; init; } = [];

    /// <summary>What groups should look like beyond the wishes.</summary>
    public GroupGoal Goal { get; init; }

    /// <summary>The same seed gives the same groups, another one usually others.</summary>
    public ulong Seed { get; init; }

    /// <summary>Throws where something is outside its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Too many of something, no group, a size, an experience, or a pupil or group that is not there.</exception>
    /// <exception cref="ArgumentException">A wish about one pupil and the same.</exception>
    internal void Check()
    {
        if (Pupils.Count > 200) throw new ArgumentOutOfRangeException(nameof(Pupils), Pupils.Count, "At most 200 pupils are grouped.");
        if (Sizes.Count is < 1 or > 100) throw new ArgumentOutOfRangeException(nameof(Sizes), Sizes.Count, "There are 1 to 100 groups.");
        if (Wishes.Count > 400) throw new ArgumentOutOfRangeException(nameof(Wishes), Wishes.Count, "At most 400 wishes are looked at.");
        if (!Enum.IsDefined(Goal)) throw new ArgumentOutOfRangeException(nameof(Goal), Goal, "The goal is any, mix or match.");
        foreach (var size in Sizes)
            if (size.Least < 0 || size.Most < size.Least) throw new ArgumentOutOfRangeException(nameof(Sizes), size, "A group has 0 pupils or more, and at most no fewer than at least.");
        foreach (var pupil in Pupils)
            if (pupil.ExperienceFraction is { } e && !(e is >= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(Pupils), e, "Experience is 0 to 1.");
        foreach (var wish in Wishes)
        {
            if (wish.Kind == GroupWishKind.SupporterIn) Group(wish.First, nameof(Wishes));
            else
            {
                Pupil(wish.First, nameof(Wishes));
                Pupil(wish.Second, nameof(Wishes));
                if (!Enum.IsDefined(wish.Kind)) throw new ArgumentOutOfRangeException(nameof(Wishes), wish, "A wish is together, apart or a supporter.");
                if (wish.First == wish.Second) throw new ArgumentException("A wish is about two pupils.", nameof(Wishes));
            }
        }
        foreach (var place in Locks)
        {
            Pupil(place.Pupil, nameof(Locks));
            Group(place.Group, nameof(Locks));
        }
    }

    private void Pupil(int pupil, string name)
    {
        if (pupil < 0 || pupil >= Pupils.Count) throw new ArgumentOutOfRangeException(name, pupil, "A pupil is a place in the list of pupils.");
    }

    private void Group(int group, string name)
    {
        if (group < 0 || group >= Sizes.Count) throw new ArgumentOutOfRangeException(name, group, "A group is a place in the list of sizes.");
    }
}
