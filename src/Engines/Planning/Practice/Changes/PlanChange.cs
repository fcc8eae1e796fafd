namespace Slantwise.Engines.Planning.Practice.Changes;

/// <summary>A changed plan, what it gives and what it costs; in numbers, for the teacher to weigh.</summary>
/// <param name="Plan">The plan with the change.</param>
/// <param name="Outlook">What it gives with equal times.</param>
/// <param name="GainTrials">Trials more for the pupil who has fewest.</param>
/// <param name="GainedWaitingFraction">How much smaller the waiting share is; below 0 where it grows.</param>
/// <param name="AddedMats">Mats more.</param>
/// <param name="AddedSideStations">Stations without mats more.</param>
/// <param name="CutTalkS">Talk less.</param>
/// <param name="CutSets">Sets less: so many decisions a pupil does not take. The trials of a set grow, so that the plan's trials stay.</param>
/// <param name="AddedTrialsATurn">Trials in a row more; others wait longer at a time.</param>
/// <param name="IsObserverNew">Whether somebody who waits writes now, and the performer no longer.</param>
public sealed record PlanChange(
    PracticePlan Plan, PracticeOutlook Outlook, int GainTrials, double GainedWaitingFraction, int AddedMats, int AddedSideStations, double CutTalkS,
    int CutSets, int AddedTrialsATurn, bool IsObserverNew)
{
    /// <summary>How many different things are changed.</summary>
    public int KindCount => new[] { AddedMats > 0, AddedSideStations > 0, CutTalkS > 0, CutSets > 0, AddedTrialsATurn > 0, IsObserverNew }.Count(k => k);
}
