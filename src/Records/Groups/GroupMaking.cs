using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Records.Groups;

/// <summary>Groups made anew.</summary>
/// <param name="Plan">The plan with them; as it was where there are none.</param>
/// <param name="Asking">What was asked.</param>
/// <param name="Division">What the engine answered.</param>
public sealed record GroupMaking(GroupPlan Plan, GroupAsking Asking, GroupDivision Division)
{
    /// <summary>Whether there are groups.</summary>
    public bool IsMade => Division.GroupOf is not null;

    /// <summary>Makes groups; the same plan gives the same ones. Who is fixed stays, and mats stay with their group while there are as many groups.</summary>
    /// <param name="roster">Who is grouped; somebody, and not too many (<see cref="GroupRoster.CanBeGrouped"/>).</param>
    /// <param name="plan">What is wished.</param>
    /// <param name="matCount">Mats of the lesson; none where nobody planned any.</param>
    public static GroupMaking Of(GroupRoster roster, GroupPlan plan, int? matCount)
    {
        var asking = GroupAsking.Anew(roster, plan);
        var division = GroupDivision.Of(asking.Request);
        if (division.GroupOf is not { } groupOf) return new(plan, asking, division);
        var count = asking.Request.Sizes.Count;
        var mats = plan.Groups.Count == count ? [.. plan.Groups.Select(g => g.MatNumbers)] : GroupMats.Shared(matCount, count);
        var members = asking.PupilIds.Select((id, place) => (id, Group: groupOf[place])).ToLookup(p => p.Group, p => p.id);
        var locked = asking.Request.Locks.Select(l => asking.PupilIds[l.Pupil]).ToHashSet();
        return new(
            plan with { Groups = [.. Enumerable.Range(0, count).Select(g => new LessonGroup([.. members[g]], [.. members[g].Where(locked.Contains)], mats[g]))] }, asking, division);
    }
}
