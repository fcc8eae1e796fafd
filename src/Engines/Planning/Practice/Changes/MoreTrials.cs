namespace Slantwise.Engines.Planning.Practice.Changes;

/// <summary>What would give each pupil some trials more.</summary>
/// <param name="Before">What the plan gives as it is.</param>
/// <param name="Single">For each thing that may be changed the smallest change that reaches the goal alone; where none does, the smallest that gains most, if any gains.</param>
/// <param name="Pairs">Two things changed together that reach the goal where neither does alone, the smallest such steps of both.</param>
/// <remarks>
/// A small search: mats, stations, sets and trials a turn one by one, talk by the half minute; all of them tried, gains by the formulas for equal times. Nothing is
/// put before anything else: changes stand in the order mats, stations, observer, trials a turn, sets, talk.
/// </remarks>
public sealed record MoreTrials(PracticeOutlook Before, IReadOnlyList<PlanChange> Single, IReadOnlyList<PlanChange> Pairs)
{
    private const double TalkStepS = 30;

    /// <summary>Looks for changes.</summary>
    /// <param name="plan">Within the ranges of its properties.</param>
    /// <param name="limits">What may be changed.</param>
    /// <param name="moreTrials">How many trials more the pupil with fewest shall have, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">No trial more asked for; a limit on the wrong side of the plan, or outside the range of the plan's property.</exception>
    public static MoreTrials Of(PracticePlan plan, ChangeLimits limits, int moreTrials)
    {
        plan.Check();
        Check(plan, limits, moreTrials);
        var before = PracticeOutlook.Of(plan);
        var kinds = Kinds(plan, limits).ToList();

        PlanChange Tried(PracticePlan changed)
        {
            var outlook = PracticeOutlook.Of(changed);
            return new(
                changed, outlook, outlook.FewestTrials - before.FewestTrials, before.WaitingFraction - outlook.WaitingFraction, changed.MatCount - plan.MatCount,
                changed.SideStationCount - plan.SideStationCount, plan.TalkS - changed.TalkS, plan.SetCount - changed.SetCount,
                changed.TrialsATurn - plan.TrialsATurn, changed.RecordedBy != plan.RecordedBy);
        }

        var single = new List<PlanChange>();
        var alone = new bool[kinds.Count];
        for (var k = 0; k < kinds.Count; k++)
        {
            var tried = kinds[k].Select(step => Tried(step(plan))).ToList();
            var reaching = tried.FirstOrDefault(t => t.GainTrials >= moreTrials);
            alone[k] = reaching is not null;
            if ((reaching ?? tried.MaxBy(t => t.GainTrials)) is { } change && (change.GainTrials > 0 || change.GainedWaitingFraction > 0.01)) single.Add(change);
        }

        var pairs = new List<PlanChange>();
        for (var a = 0; a < kinds.Count; a++)
        {
            for (var b = a + 1; b < kinds.Count; b++)
            {
                if (alone[a] || alone[b]) continue;
                // By the sum of the two steps: the mildest pair comes first.
                var steps = from i in Enumerable.Range(0, kinds[a].Count) from j in Enumerable.Range(0, kinds[b].Count) orderby i + j, i select (i, j);
                var pair = steps.Select(s => Tried(kinds[b][s.j](kinds[a][s.i](plan)))).FirstOrDefault(t => t.GainTrials >= moreTrials);
                if (pair is not null) pairs.Add(pair);
            }
        }
        return new(before, single, pairs);
    }

    private static IEnumerable<List<Func<PracticePlan, PracticePlan>>> Kinds(PracticePlan plan, ChangeLimits limits)
    {
        yield return [.. Upwards(plan.MatCount, limits.MostMats).Select<int, Func<PracticePlan, PracticePlan>>(m => p => p with { MatCount = m })];
        yield return [.. Upwards(plan.SideStationCount, limits.MostSideStations).Select<int, Func<PracticePlan, PracticePlan>>(s => p => p with { SideStationCount = s })];
        yield return limits.MayObserverRecord && plan is { RecordS: > 0, RecordedBy: not Recording.Observer } ? [p => p with { RecordedBy = Recording.Observer }] : [];
        yield return [.. Upwards(plan.TrialsATurn, limits.MostTrialsATurn).Select<int, Func<PracticePlan, PracticePlan>>(t => p => p with { TrialsATurn = t })];
        yield return [.. Upwards(limits.FewestSets - 1, plan.SetCount - 1).Reverse().Select<int, Func<PracticePlan, PracticePlan>>(s => p => p with
        {
            SetCount = s, TrialsASet = Math.Min(50, (plan.PlannedTrials + s - 1) / s),
        })];
        var talkSteps = (int)Math.Floor((plan.TalkS - limits.LeastTalkS) / TalkStepS + 1e-9);
        yield return [.. Upwards(0, talkSteps).Select<int, Func<PracticePlan, PracticePlan>>(s => p => p with { TalkS = plan.TalkS - s * TalkStepS })];
    }

    private static IEnumerable<int> Upwards(int from, int to) => Enumerable.Range(from + 1, Math.Max(0, to - from));

    private static void Check(PracticePlan plan, ChangeLimits limits, int moreTrials)
    {
        if (moreTrials < 1) throw new ArgumentOutOfRangeException(nameof(moreTrials), moreTrials, "1 trial more or several are asked for.");
        var isInRange = limits.MostMats >= plan.MatCount && limits.MostMats <= 100 && limits.LeastTalkS >= 0 && limits.LeastTalkS <= plan.TalkS
            && limits.FewestSets >= 1 && limits.FewestSets <= plan.SetCount && limits.MostSideStations >= plan.SideStationCount && limits.MostSideStations <= 10
            && limits.MostTrialsATurn >= plan.TrialsATurn && limits.MostTrialsATurn <= 20;
        if (!isInRange) throw new ArgumentOutOfRangeException(nameof(limits), limits, "Limits lie between what is planned and what a plan can have.");
    }
}
