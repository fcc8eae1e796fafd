using MathNet.Numerics.LinearAlgebra;

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
    private const double StepRad = 1e-6;
    private const double GiveUpDamping = 1e8;

    private static readonly (Joint Joint, Side Side)[] Joints = (
        from joint in Enum.GetValues<Joint>()
        from side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle]
        select (joint, side)).ToArray();

    /// <summary>Whether every goal is met to within what counts as touching.</summary>
    public bool IsFound => MissedH <= SettledBody.TouchingH;

    /// <summary>The pose nearest to a first guess that meets the goals.</summary>
    /// <param name="guess">Where to begin; joints that no goal needs stay near it.</param>
    /// <param name="goals">What is wanted, at least one.</param>
    /// <returns>It may miss: look at <see cref="IsFound"/>.</returns>
    /// <exception cref="ArgumentException">No goal.</exception>
    /// <remarks>Damped least squares with differences for derivatives. Source: [Marquardt1963].</remarks>
    public static PoseSearch Fit(Pose guess, IReadOnlyList<PoseGoal> goals)
    {
        if (goals.Count == 0) throw new ArgumentException("At least one goal is needed.", nameof(goals));
        var start = Unknowns(guess, goals);
        Vector<double> Missed(Vector<double> at) => Vector<double>.Build.DenseOfEnumerable(
            PoseResiduals.Of(PoseOf(at), at[^1], goals).Concat((StayNear * (at - start)).Take(at.Count - 1)));

        var (now, damping, round) = (Within(start), 1e-3, 0);
        var missed = Missed(now);
        for (; round < RoundsAtMost && damping < GiveUpDamping; round++)
        {
            var slopes = Slopes(Missed, now, missed);
            var square = slopes.TransposeThisAndMultiply(slopes);
            var pull = slopes.TransposeThisAndMultiply(missed);
            for (var isBetter = false; !isBetter && damping < GiveUpDamping;)
            {
                var damped = square + Matrix<double>.Build.DenseDiagonal(now.Count, damping);
                var next = Within(now - damped.Cholesky().Solve(pull));
                var nextMissed = Missed(next);
                var gain = missed * missed - nextMissed * nextMissed;
                isBetter = gain > 0;
                damping = isBetter ? (gain < 1e-14 ? GiveUpDamping : Math.Max(1e-9, damping / 3)) : damping * 4;
                if (isBetter) (now, missed) = (next, nextMissed);
            }
        }
        var pose = PoseOf(now);
        return new PoseSearch(pose, PoseResiduals.Of(pose, now[^1], goals).Max(Math.Abs), round);
    }

    private static Matrix<double> Slopes(Func<Vector<double>, Vector<double>> missedAt, Vector<double> now, Vector<double> missed)
    {
        var slopes = Matrix<double>.Build.Dense(missed.Count, now.Count);
        for (var i = 0; i < now.Count; i++)
        {
            var moved = now.Clone();
            moved[i] += StepRad;
            slopes.SetColumn(i, (missedAt(moved) - missed) / StepRad);
        }
        return slopes;
    }

    // Bow, lean, every joint, and last the height of the hips: contacts are asked for on one floor. The turn is free and left alone.
    private static Vector<double> Unknowns(Pose guess, IReadOnlyList<PoseGoal> goals)
    {
        var skeleton = Skeleton.Of(guess);
        var heights = goals.OfType<PoseGoal.OnFloor>().Select(g => PoseResiduals.Lowest(skeleton, g.Contact).ZH).ToArray();
        var hipsH = heights.Length == 0 ? 0 : -heights.Average();
        return Vector<double>.Build.DenseOfArray([guess.BowRad, guess.LeanRad, .. Joints.Select(j => guess.AngleRad(j.Joint, j.Side)), hipsH]);
    }

    private static Pose PoseOf(Vector<double> unknowns)
    {
        var pose = Pose.Upright.Placed(unknowns[0], unknowns[1], 0);
        for (var i = 0; i < Joints.Length; i++) pose = pose.With(Joints[i].Joint, Joints[i].Side, unknowns[2 + i]);
        return pose;
    }

    private static Vector<double> Within(Vector<double> unknowns)
    {
        var within = unknowns.Clone();
        for (var i = 0; i < Joints.Length; i++)
        {
            var (leastDeg, mostDeg) = JointLimits.Of(Joints[i].Joint);
            within[2 + i] = Math.Clamp(within[2 + i], leastDeg * Math.PI / 180, mostDeg * Math.PI / 180);
        }
        return within;
    }
}
