using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Sheets;

/// <summary>What a pupil may be offered. The one place that decides it, for sheets, tablets, paper and reach.</summary>
public static class Offer
{
    /// <summary>The levels left after the school's policy and the pupil's restrictions have removed theirs.</summary>
    /// <param name="levels">The levels of a task, in the order to offer them.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="restrictions">The pupil's restrictions; those that do not hold on the day are passed over.</param>
    /// <param name="day">The day of the lesson.</param>
    /// <returns>In the order given. Empty where nothing is left.</returns>
    public static IReadOnlyList<Level> LevelsFor(
        IEnumerable<Level> levels, SafetyPolicy policy, IEnumerable<Restriction> restrictions, DateOnly day)
    {
        var ruledOut = restrictions.Where(r => r.HoldsOn(day)).Select(r => r.Without).ToHashSet();
        return levels.Where(level => Removed(level, policy).Count == 0 && !PostureDemands.Of(level).Any(ruledOut.Contains)).ToList();
    }

    /// <summary>Why a policy takes a level from everybody.</summary>
    /// <param name="level">Any level.</param>
    /// <param name="policy">The school's policy.</param>
    /// <returns>One a demand, in the order of <see cref="BodyDemand"/>. Empty where the level stays.</returns>
    public static IReadOnlyList<Removal> Removed(Level level, SafetyPolicy policy) =>
        [.. PostureDemands.Of(level).Distinct().Order().Select(demand => RemovalBy(demand, level.Dose, policy)).OfType<Removal>()];

    /// <summary>Whether a policy leaves a demand to anybody. Where it does, it may still remove a level that holds it for too long: ask <see cref="Removed"/> about levels.</summary>
    /// <param name="demand">What a level asks of the body.</param>
    /// <param name="policy">The school's policy.</param>
    public static bool IsAllowed(BodyDemand demand, SafetyPolicy policy) => demand switch
    {
        // Planned means that something was planned: where no condition is named, nothing was.
        BodyDemand.HeadWeight => policy.HeadWeight == PolicyChoice.Planned && policy.HeadConditions.Count > 0,
        BodyDemand.Inversion => policy.Inversion == PolicyChoice.Planned,
        BodyDemand.Roll => policy.Rolls == PolicyChoice.Planned,
        BodyDemand.Spotting => policy.Spotting == PolicyChoice.Planned,
        _ => true,
    };

    /// <summary>A sheet as one pupil's own numbers count its levels: what is offered from 1 without a gap, and after it what is not.</summary>
    /// <param name="content">The frozen sheet.</param>
    /// <param name="policy">The school's policy.</param>
    /// <param name="restrictions">The pupil's restrictions; those that do not hold on the day are passed over.</param>
    /// <param name="day">The day of the lesson.</param>
    /// <returns>The same levels, task by task. The pupil's own sheet has the offered ones; whoever types it in may meet the others.</returns>
    public static SheetContent InOwnOrder(SheetContent content, SafetyPolicy policy, IReadOnlyList<Restriction> restrictions, DateOnly day) => content with
    {
        Tasks = [.. content.Tasks.Select(task =>
        {
            var offered = LevelsFor(task.Levels, policy, restrictions, day);
            return task with { Levels = [.. offered, .. task.Levels.Except(offered)] };
        })],
    };

    private static Removal? RemovalBy(BodyDemand demand, Dose dose, SafetyPolicy policy) =>
        !IsAllowed(demand, policy) ? new Removal(demand)
        : demand == BodyDemand.HeadWeight && dose.Kind == DoseKind.HoldS && dose.Amount > policy.HeadHoldCapS ? new Removal(demand, policy.HeadHoldCapS)
        : null;
}
