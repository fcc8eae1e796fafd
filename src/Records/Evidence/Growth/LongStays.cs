using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence.Growth;

/// <summary>How often a pupil stayed for three sets or more where nearly all tries or few came off. Something to ask about: there may be a good reason.</summary>
/// <param name="NearlyAlwaysCount">Stays where nearly all came off.</param>
/// <param name="SeldomCount">Stays where few did.</param>
/// <param name="PupilCount">Pupils with such a stay.</param>
/// <param name="EntryIds">The decisions to stay.</param>
public sealed record LongStays(int NearlyAlwaysCount, int SeldomCount, int PupilCount, IReadOnlyList<Guid> EntryIds)
{
    /// <summary>The long stays of a class.</summary>
    /// <param name="pupils">Its pupils.</param>
    public static LongStays Of(IReadOnlyList<PupilEvidence> pupils)
    {
        var found = (
            from pupil in pupils
            from task in pupil.Tasks
            let sets = task.Sets.Where(s => s.Decision is not null).ToList()
            from stay in LongStay.Of([.. sets.Select(s => new DecidedSet(s.Success.SuccessCount, s.Success.TrialCount, DirectionOf(s.Decision!.Value)))])
            select (pupil.PupilId, stay.Kind, Ids: DecisionsOf(sets, stay))).ToList();
        return new(
            found.Count(f => f.Kind == StayKind.NearlyAlways), found.Count(f => f.Kind == StayKind.Seldom),
            found.Select(f => f.PupilId).Distinct().Count(), [.. found.SelectMany(f => f.Ids)]);
    }

    // A set of too few tries lies within a stay and is none of its sets.
    private static List<Guid> DecisionsOf(List<SetEvidence> sets, LongStay stay) => sets
        .Skip(stay.FirstIndex)
        .Where(s => DecisionCoding.BandOf(s.Success.SuccessCount, s.Success.TrialCount) != SuccessBand.TooFew)
        .Take(stay.SetCount).Select(s => s.DecisionEntryId!.Value).ToList();

    private static DecisionDirection DirectionOf(NextLevel next) => next switch
    {
        NextLevel.Harder => DecisionDirection.Harder,
        NextLevel.Easier => DecisionDirection.Easier,
        _ => DecisionDirection.Same,
    };
}
