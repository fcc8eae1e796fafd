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
        return levels.Where(level => PostureDemands.Of(level).All(d => IsAllowed(d, policy) && !ruledOut.Contains(d))).ToList();
    }

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

    /// <summary>Whether the policy allows a demand for anybody.</summary>
    /// <param name="demand">What a level asks of the body.</param>
    /// <param name="policy">The school's policy.</param>
    public static bool IsAllowed(BodyDemand demand, SafetyPolicy policy) => demand switch
    {
        BodyDemand.HeadWeight => policy.HeadWeight != PolicyChoice.NotAllowed,
        BodyDemand.Inversion => policy.Inversion != PolicyChoice.NotAllowed,
        BodyDemand.Roll => policy.Rolls != PolicyChoice.NotAllowed,
        _ => true,
    };
}
