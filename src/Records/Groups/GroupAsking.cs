using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Records.Groups;

/// <summary>A plan as the engine is asked for it.</summary>
/// <param name="PupilIds">The pupils in the order of the request: by id, so that another name changes no group.</param>
/// <param name="Wishes">The wishes about two pupils, in the order of the request; wishes for a supporter come after them, a group each.</param>
/// <param name="Request">The request.</param>
public sealed record GroupAsking(IReadOnlyList<Guid> PupilIds, IReadOnlyList<PupilWish> Wishes, GroupRequest Request)
{
    /// <summary>Asks for groups made anew: as many as are asked for, with what is fixed.</summary>
    /// <param name="roster">Who is grouped; somebody, and not too many (<see cref="GroupRoster.CanBeGrouped"/>).</param>
    /// <param name="plan">What is wished.</param>
    /// <returns>Wishes about somebody who is not grouped are passed over. What is fixed in a group that will not be there any more is free.</returns>
    public static GroupAsking Anew(GroupRoster roster, GroupPlan plan)
    {
        var count = plan.Sizing.GroupsFor(roster.Pupils.Count);
        return Of([.. roster.Pupils.Select(p => p.Id)], plan, GroupSize.Even(roster.Pupils.Count, count));
    }

    /// <summary>Asks about the groups as they stand: those who are in one, even sizes for all who are grouped.</summary>
    /// <param name="roster">Who is grouped.</param>
    /// <param name="plan">A plan with a group or several.</param>
    public static GroupAsking AsItStands(GroupRoster roster, GroupPlan plan) =>
        Of([.. roster.Pupils.Select(p => p.Id).Where(p => plan.GroupOf(p) is not null)], plan, GroupSize.Even(roster.Pupils.Count, plan.Groups.Count));

    /// <summary>The group of each pupil as the plan has it, in the order of the request.</summary>
    /// <param name="plan">A plan in which each of them has a group.</param>
    public IReadOnlyList<int> GroupOf(GroupPlan plan) => [.. PupilIds.Select(p => plan.GroupOf(p)!.Value)];

    private static GroupAsking Of(IReadOnlyList<Guid> pupils, GroupPlan plan, IReadOnlyList<GroupSize> sizes)
    {
        List<Guid> ids = [.. pupils.Order()];
        var placeOf = ids.Select((id, place) => (id, place)).ToDictionary(p => p.id, p => p.place);
        List<PupilWish> wishes = [.. plan.Wishes.Where(w => placeOf.ContainsKey(w.FirstPupilId) && placeOf.ContainsKey(w.SecondPupilId) && w.FirstPupilId != w.SecondPupilId)];
        return new(ids, wishes, new GroupRequest
        {
            Pupils = [.. ids.Select(plan.KnownOf).Select(k => new GroupPupil(FractionOf(k.Experience), k.MaySupport))],
            Sizes = sizes,
            Wishes =
            [
                .. wishes.Select(w => new GroupWish(w.IsTogether ? GroupWishKind.Together : GroupWishKind.Apart, placeOf[w.FirstPupilId], placeOf[w.SecondPupilId])),
                .. plan.NeedsSupporter ? Enumerable.Range(0, sizes.Count).Select(GroupWish.SupporterIn) : [],
            ],
            Locks = [.. plan.Groups.Take(sizes.Count).SelectMany((g, i) => g.LockedPupilIds.Where(placeOf.ContainsKey).Select(p => new GroupLock(placeOf[p], i)))],
            Goal = plan.Goal,
            Seed = (ulong)plan.Seed,
        });
    }

    // Three steps that lie evenly: what a teacher says of having done it carries no more.
    private static double? FractionOf(PupilExperience? experience) => experience switch
    {
        PupilExperience.New => 0,
        PupilExperience.Some => 0.5,
        PupilExperience.Much => 1,
        _ => null,
    };
}
