namespace Slantwise.Engines.Mechanics;

/// <summary>Finds angles for what an author wants ("hands here, crown there, knees on elbows"), near a first guess and within the joints' limits.</summary>
/// <param name="Pose">The best pose found.</param>
/// <param name="MissedH">The largest amount by which a goal is missed, in statures; a direction or an angle counts a tenth of its radians.</param>
/// <param name="RoundCount">How many rounds it took.</param>
public sealed record PoseSearch(Pose Pose, double MissedH, int RoundCount)
{
    private const int RoundsAtMost = 200;
    // Pull of the first guess on a joint against a goal's 1: it chooses among poses and hardly spoils a goal.
    private const double StayNear = .005;

    /// <summary>Whether every goal is met to within what counts as touching.</summary>
    public bool IsFound => MissedH <= SettledBody.TouchingH;

    /// <summary>The pose nearest to a first guess that meets the goals.</summary>
    /// <param name="guess">Where to begin; joints that no goal needs stay near it, and so does the turn.</param>
    /// <param name="goals">What is wanted, at least one; front and left as if the guess were not turned.</param>
    /// <returns>It may miss: look at <see cref="IsFound"/>.</returns>
    /// <exception cref="ArgumentException">No goal.</exception>
    /// <remarks>Damped least squares. Source: [Marquardt1963].</remarks>
    public static PoseSearch Fit(Pose guess, IReadOnlyList<PoseGoal> goals)
    {
        if (goals.Count == 0) throw new ArgumentException("At least one goal is needed.", nameof(goals));
        // The front of the goals is the guess's own, whichever way it is turned on the floor.
        var turnRad = guess.TurnRad;
        guess = guess.Placed(guess.BowRad, guess.LeanRad, 0);
        var skeleton = Skeleton.Of(guess);
        var heights = goals.OfType<PoseGoal.OnFloor>().Select(g => SettledBody.Lowest(skeleton, g.Contact).ZH).ToArray();
        var pelvis = skeleton.Frame(SegmentKind.LowerTrunk, Side.Middle);
        var start = new PlacedPose(guess, pelvis with { Origin = new(0, 0, heights.Length == 0 ? 0 : -heights.Average()) });

        var stays = new double[PoseChain.UnknownCount];
        Array.Fill(stays, StayNear, 0, PoseChain.JointCount + 3);
        // Goals of an author do not say which way round on the floor: the pelvis keeps facing as it does.
        PoseGoal[] all = [.. goals, new PoseGoal.Facing(new(1, 0))];
        var descent = new PoseDescent(start, all, Enumerable.Repeat(1.0, all.Length).ToArray(), stays);
        var (chain, roundCount) = descent.From(start, RoundsAtMost);
        var pose = chain.Pose(guess).Pose;
        return new PoseSearch(pose.Placed(pose.BowRad, pose.LeanRad, pose.TurnRad + turnRad), PoseResiduals.MostMissedH(chain, goals), roundCount);
    }
}
