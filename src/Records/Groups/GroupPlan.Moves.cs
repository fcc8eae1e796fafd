namespace Slantwise.Records.Groups;

public sealed partial record GroupPlan
{
    /// <summary>The group a pupil is in, from 0; none where in none.</summary>
    /// <param name="pupilId">The pupil.</param>
    public int? GroupOf(Guid pupilId)
    {
        for (var g = 0; g < Groups.Count; g++)
            if (Groups[g].PupilIds.Contains(pupilId)) return g;
        return null;
    }

    /// <summary>Whether a pupil stays where they are when groups are made anew.</summary>
    /// <param name="pupilId">The pupil.</param>
    public bool IsLocked(Guid pupilId) => Groups.Any(g => g.LockedPupilIds.Contains(pupilId));

    /// <summary>What was said of a pupil; nothing where nobody said.</summary>
    /// <param name="pupilId">The pupil.</param>
    public KnownExperience KnownOf(Guid pupilId) => Known.FirstOrDefault(k => k.PupilId == pupilId) ?? new(pupilId, null, false);

    /// <summary>The plan with a pupil in another group. A lock goes along.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="group">The group, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A group that is not there.</exception>
    public GroupPlan Moved(Guid pupilId, int group)
    {
        if (group < 0 || group >= Groups.Count) throw new ArgumentOutOfRangeException(nameof(group), group, "A group is a place in the list of groups.");
        if (GroupOf(pupilId) == group) return this;
        var isLocked = IsLocked(pupilId);
        return this with
        {
            Groups =
            [
                .. Groups.Select((g, i) => g with
                {
                    PupilIds = [.. g.PupilIds.Where(p => p != pupilId), .. i == group ? [pupilId] : Array.Empty<Guid>()],
                    LockedPupilIds = [.. g.LockedPupilIds.Where(p => p != pupilId), .. i == group && isLocked ? [pupilId] : Array.Empty<Guid>()],
                }),
            ],
        };
    }

    /// <summary>The plan with a pupil fixed where they are, or free again; unchanged for somebody in no group.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <param name="isLocked">Whether fixed.</param>
    public GroupPlan WithLock(Guid pupilId, bool isLocked) => GroupOf(pupilId) is not { } at || IsLocked(pupilId) == isLocked ? this : this with
    {
        Groups = [.. Groups.Select((g, i) => i != at ? g : g with { LockedPupilIds = isLocked ? [.. g.LockedPupilIds, pupilId] : [.. g.LockedPupilIds.Where(p => p != pupilId)] })],
    };

    /// <summary>The plan with what is said of a pupil; what says nothing is not kept.</summary>
    /// <param name="known">The pupil and what is said.</param>
    public GroupPlan WithKnown(KnownExperience known)
    {
        var others = Known.Where(k => k.PupilId != known.PupilId);
        return this with { Known = known is { Experience: null, MaySupport: false } ? [.. others] : [.. others, known] };
    }

    /// <summary>The plan with one wish more. A wish about the same two takes the place of the earlier one; unchanged for one pupil twice, or when there are <see cref="MostWishes"/>.</summary>
    /// <param name="wish">The wish.</param>
    public GroupPlan WithWish(PupilWish wish)
    {
        if (wish.FirstPupilId == wish.SecondPupilId) return this;
        List<PupilWish> others = [.. Wishes.Where(w => !IsAbout(w, wish))];
        return others.Count >= MostWishes ? this : this with { Wishes = [.. others, wish] };
    }

    /// <summary>The plan without a wish.</summary>
    /// <param name="wish">The wish.</param>
    public GroupPlan WithoutWish(PupilWish wish) => this with { Wishes = [.. Wishes.Where(w => w != wish)] };

    /// <summary>The plan with other mats for a group.</summary>
    /// <param name="group">The group, from 0.</param>
    /// <param name="mats">Its mats, from 1; may be empty.</param>
    public GroupPlan WithMats(int group, IReadOnlyList<int> mats) => this with { Groups = [.. Groups.Select((g, i) => i == group ? g with { MatNumbers = mats } : g)] };

    /// <summary>The plan for those who are in the class now and are grouped: who left the class is in no wish any more, who is not grouped in no group.</summary>
    /// <param name="roster">Who is grouped.</param>
    public GroupPlan For(GroupRoster roster)
    {
        var (inClass, grouped) = (roster.Class.Select(p => p.Id).ToHashSet(), roster.Pupils.Select(p => p.Id).ToHashSet());
        return this with
        {
            Groups = [.. Groups.Select(g => g with { PupilIds = [.. g.PupilIds.Where(grouped.Contains)], LockedPupilIds = [.. g.LockedPupilIds.Where(p => grouped.Contains(p) && g.PupilIds.Contains(p))] })],
            Wishes = [.. Wishes.Where(w => inClass.Contains(w.FirstPupilId) && inClass.Contains(w.SecondPupilId))],
            Known = [.. Known.Where(k => inClass.Contains(k.PupilId))],
        };
    }

    private static bool IsAbout(PupilWish one, PupilWish other) =>
        (one.FirstPupilId, one.SecondPupilId) == (other.FirstPupilId, other.SecondPupilId) || (one.FirstPupilId, one.SecondPupilId) == (other.SecondPupilId, other.FirstPupilId);
}
