using Slantwise.Engines.Planning.Queues;

namespace Slantwise.Engines.Planning.Practice;

/// <summary>One lesson gone through turn by turn.</summary>
/// <param name="Trials">Trials of each pupil at the mats.</param>
/// <param name="PerformingFraction">Shares of the time at the mats, mean over pupils; they add up to 1, or are all 0 where there is no time.</param>
/// <param name="RoleFraction">See there.</param>
/// <param name="RestingFraction">See there.</param>
/// <param name="WaitingFraction">See there.</param>
/// <param name="LastDoneS">When the last one has the planned trials, from the first turn; the end of the lesson does not cut it off.</param>
internal sealed record PracticeRun(
    int[] Trials, double PerformingFraction, double RoleFraction, double RestingFraction, double WaitingFraction, double LastDoneS)
{
    /// <summary>Goes through a lesson.</summary>
    /// <param name="plan">A plan that was checked.</param>
    /// <param name="endS">When the time at the mats is over.</param>
    /// <param name="busyFactor">By how much a turn takes longer than its mean: pupil, turn.</param>
    /// <param name="awayFactor">By how much the time after it is longer than its mean.</param>
    public static PracticeRun Of(PracticePlan plan, double endS, Func<int, int, double> busyFactor, Func<int, int, double> awayFactor)
    {
        var trials = new int[plan.PupilsAtMats];
        double performing = 0, parts = 0, resting = 0, waiting = 0, lastDoneS = 0;
        var (first, after, demand) = (0, plan.TurnS, Demand(plan));
        foreach (var (pupils, places) in plan.Queues())
        {
            var offset = first;
            double Busy(int who, int turn) => plan.TurnS * busyFactor(offset + who, turn);
            double Away(int who, int turn) => plan.AwayS * awayFactor(offset + who, turn);

            double busyS = 0, awayS = 0;
            foreach (var turn in ClosedQueue.Turns(pupils, places, Busy, Away, int.MaxValue, endS))
            {
                var factor = (turn.FinishS - turn.StartS) / after;
                trials[offset + turn.Who] += TrialsBy(plan, factor, endS - turn.StartS);
                busyS += Math.Min(turn.FinishS, endS) - turn.StartS;
                awayS += Math.Clamp(endS - turn.FinishS, 0, Away(turn.Who, turn.Turn));
            }
            // Shares of the time of the whole group: what it does at any moment is not followed, its means are.
            var wholeS = pupils * endS;
            var roleS = Math.Min(busyS * demand, wholeS - busyS);
            var idleS = Math.Max(0, wholeS - busyS - awayS - roleS);
            performing += busyS;
            parts += roleS;
            waiting += idleS;
            resting += wholeS - busyS - roleS - idleS;
            lastDoneS = Math.Max(lastDoneS, Done(plan, pupils, places, Busy, Away));
            first += pupils;
        }
        var all = plan.PupilsAtMats * endS;
        return all > 0
            ? new(trials, performing / all, parts / all, Math.Max(0, resting / all), waiting / all, lastDoneS)
            : new(trials, 0, 0, 0, 0, lastDoneS);
    }

    /// <summary>How many others a turn keeps busy, in turns: partners and observers, and whoever writes for the performer.</summary>
    private static double Demand(PracticePlan plan) =>
        plan.PartnersATurn + Math.Max(plan.ObserversATurn, plan.RecordedBy == Recording.Observer ? plan.RecordS / plan.TurnS : 0);

    // A trial counts once its action is over; stepping off may fall behind the end.
    private static int TrialsBy(PracticePlan plan, double factor, double leftS)
    {
        var trials = 0;
        // A millionth of a second more: sums of seconds that end together must not miss each other by a rounding.
        while (trials < plan.TrialsATurn && factor * (plan.EnterS + (trials + 1) * plan.ActionS + trials * plan.AgainS) <= leftS + 1e-6) trials++;
        return trials;
    }

    private static double Done(PracticePlan plan, int pupils, int places, Func<int, int, double> busyS, Func<int, int, double> awayS)
    {
        var spare = plan.PlannedTurns * plan.TrialsATurn - plan.PlannedTrials;
        var lastPart = 1 - spare * (plan.ActionS + plan.AgainS) / plan.TurnS;
        double Busy(int who, int turn) => busyS(who, turn) * (turn == plan.PlannedTurns - 1 ? lastPart : 1);
        return ClosedQueue.Turns(pupils, places, Busy, awayS, plan.PlannedTurns, double.PositiveInfinity).Max(t => t.FinishS);
    }
}
