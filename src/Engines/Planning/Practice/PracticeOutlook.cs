namespace Slantwise.Engines.Planning.Practice;

/// <summary>What a plan gives if every turn takes exactly its mean time. People vary: read it beside <see cref="PracticeRanges"/>.</summary>
/// <param name="CycleS">From one turn of a pupil to the next in the long run, in the largest group: the larger of pupils · turn / places and turn + away.</param>
/// <param name="FewestTrials">Trials of the pupil who has fewest, if all go on to the end.</param>
/// <param name="MostTrials">Trials of the pupil who has most.</param>
/// <param name="MeanTrialsCount">The mean over pupils.</param>
/// <param name="PerformingFraction">The share of the time at the mats in which a pupil is on one, mean over pupils.</param>
/// <param name="RoleFraction">The share in which a pupil is partner or observer, or writes for another.</param>
/// <param name="RestingFraction">The share in which a pupil rests or writes down their own result and has no other part.</param>
/// <param name="WaitingFraction">What is left: the share in which a pupil only waits. The four shares add up to 1; all are 0 where there is no time.</param>
/// <param name="LastDoneS">When the last one has finished the planned trials, from the begin of the lesson; beyond the lesson where it is too short.</param>
/// <param name="LeftS">The time left then; below 0 by how much each round at the mats is too short.</param>
/// <param name="Cautions">What to know before believing it.</param>
/// <remarks>
/// Assumed: all come to the mats at once and queue; nobody leaves, mats are never empty while somebody waits; pauses between sets hit no turn; parts are taken first by who waits and
/// then by who rests. With equal times the order of the queue never changes and the numbers are exact.
/// </remarks>
public sealed record PracticeOutlook(
    double CycleS, int FewestTrials, int MostTrials, double MeanTrialsCount, double PerformingFraction, double RoleFraction, double RestingFraction,
    double WaitingFraction, double LastDoneS, double LeftS, PracticeCautions Cautions)
{
    /// <summary>What a plan gives with equal times.</summary>
    /// <param name="plan">Within the ranges of its properties.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or a time outside the range its property names.</exception>
    public static PracticeOutlook Of(PracticePlan plan)
    {
        plan.Check();
        var endS = Math.Max(0, plan.AtMatsS);
        var run = PracticeRun.Of(plan, endS, (_, _) => 1, (_, _) => 1);
        var (pupils, places) = plan.Queues().MaxBy(q => (double)q.Pupils / q.Places);
        var cycleS = Math.Max(pupils * plan.TurnS / Math.Min(pupils, places), plan.TurnS + plan.AwayS);
        return new(
            cycleS, run.Trials.Min(), run.Trials.Max(), run.Trials.Average(), run.PerformingFraction, run.RoleFraction, run.RestingFraction, run.WaitingFraction,
            plan.LessonS - (plan.AtMatsS - run.LastDoneS), plan.AtMatsS - run.LastDoneS, CautionsOf(plan, run));
    }

    private static PracticeCautions CautionsOf(PracticePlan plan, PracticeRun run)
    {
        var cautions = PracticeCautions.None;
        if (plan.AtMatsS <= 0) cautions |= PracticeCautions.NoTime;
        foreach (var (pupils, places) in plan.Queues())
        {
            if (plan.PartnersATurn + plan.ObserversATurn > 0 && pupils < 1 + plan.PartnersATurn + plan.ObserversATurn) cautions |= PracticeCautions.TooFewForRoles;
            if (plan is { RecordedBy: Recording.Observer, RecordS: > 0 } && pupils <= places) cautions |= PracticeCautions.NobodyToRecord;
            if (pupils < places) cautions |= PracticeCautions.EmptyPlaces;
        }
        if (plan.MatCount > plan.PupilsAtMats) cautions |= PracticeCautions.EmptyPlaces;
        return run.Trials.Min() == 0 ? cautions | PracticeCautions.SomebodyWithout : cautions;
    }
}
