namespace Slantwise.Engines.Mechanics;

/// <summary>Damped least squares over the unknowns of a pose, joints held within their limits.</summary>
/// <remarks>Source: [Marquardt1963]. A joint at a limit that would be pushed beyond it is left out of the round.</remarks>
internal sealed class PoseDescent
{
    private const int N = PoseChain.UnknownCount;
    private const double GiveUpDamping = 1e8;
    private const double SmallGain = 1e-13;
    private const int SlowAtMost = 3;

    private readonly IReadOnlyList<PoseGoal> _goals;
    private readonly double[] _pulls, _stays, _nearRad;
    private readonly SegmentFrame _nearPelvis;

    /// <summary>A search among poses.</summary>
    /// <param name="near">Where unknowns stay that no goal needs.</param>
    /// <param name="goals">What is wanted.</param>
    /// <param name="pulls">How strongly each goal pulls.</param>
    /// <param name="stays">How strongly each unknown stays near; 0 for not at all.</param>
    public PoseDescent(PlacedPose near, IReadOnlyList<PoseGoal> goals, double[] pulls, double[] stays)
    {
        (_goals, _pulls, _stays) = (goals, pulls, stays);
        _nearRad = near.Pose.AnglesRad.ToArray();
        _nearPelvis = near.Pelvis;
    }

    /// <summary>The best chain found from a start, and how many rounds it took.</summary>
    public (PoseChain Chain, int RoundCount) From(PlacedPose start, int roundsAtMost)
    {
        // A step of nothing brings a start that is beyond a limit back to it.
        var now = new PoseChain(start).Stepped(new double[N]).Turn();
        var (square, pull, step) = (new double[N * N], new double[N], new double[N]);
        var damping = 1e-4;
        var (cost, slowCount) = (Cost(now), 0);
        for (var round = 0; round < roundsAtMost; round++)
        {
            Equations(now, square, pull);
            for (var isBetter = false; !isBetter;)
            {
                Solve(square, pull, damping, now, step);
                var next = now.Stepped(step);
                var nextCost = Cost(next);
                var gain = cost - nextCost;
                isBetter = gain > 0;
                if (!isBetter)
                {
                    damping *= 4;
                    if (damping > GiveUpDamping) return (now, round + 1);
                    continue;
                }
                (now, cost) = (next.Turn(), nextCost);
                // A small gain after a short step says little: only two in a row, the second with longer steps allowed, are the end.
                slowCount = gain < SmallGain + 1e-5 * cost ? slowCount + 1 : 0;
                if (slowCount == SlowAtMost) return (now, round + 1);
                damping = Math.Max(1e-9, damping / 8);
            }
        }
        return (now, roundsAtMost);
    }

    /// <summary>Joints at an end of their range against which the goals push, the hardest pushed first.</summary>
    public IReadOnlyList<JointStop> Stops(PoseChain at)
    {
        var (square, pull) = (new double[N * N], new double[N]);
        Equations(at, square, pull);
        return [.. Enumerable.Range(0, PoseChain.JointCount).Where(i => IsStopped(at, i, pull[i])).OrderByDescending(i => Math.Abs(pull[i]))
            .Select(i => new JointStop(Pose.JointsInOrder[i].Joint, Pose.JointsInOrder[i].Side, pull[i] > 0 ? JointStopKind.Least : JointStopKind.Most))];
    }

    private double Cost(PoseChain at)
    {
        var (missedH, sum) = (PoseResiduals.MissedH(at, _goals), 0.0);
        for (var row = 0; row < missedH.Length; row++)
        {
            var pulled = _pulls[row / 3] * missedH[row];
            sum += pulled * pulled;
        }
        for (var i = 0; i < N; i++)
        {
            var strayed = _stays[i] * Strayed(at, i);
            sum += strayed * strayed;
        }
        return sum;
    }

    // The normal equations: the square of the slopes and their product with what is missed.
    private void Equations(PoseChain at, double[] square, double[] pull)
    {
        var (missedH, slopes) = PoseResiduals.WithSlopes(at, _goals);
        Array.Clear(square);
        Array.Clear(pull);
        for (var row = 0; row < missedH.Length; row++)
        {
            var weight = _pulls[row / 3] * _pulls[row / 3];
            var slope = slopes.AsSpan(row * N, N);
            for (var i = 0; i < N; i++)
            {
                if (slope[i] == 0) continue;
                var weighted = weight * slope[i];
                pull[i] += weighted * missedH[row];
                for (var j = 0; j <= i; j++) square[i * N + j] += weighted * slope[j];
            }
        }
        for (var i = 0; i < N; i++)
        {
            square[i * N + i] += _stays[i] * _stays[i];
            pull[i] += _stays[i] * _stays[i] * Strayed(at, i);
        }
    }

    private double Strayed(PoseChain at, int unknown)
    {
        if (_stays[unknown] == 0) return 0;
        if (unknown < PoseChain.JointCount) return at.AnglesRad[unknown] - _nearRad[unknown];
        var (was, now) = (_nearPelvis, at.Pelvis);
        var strayed = unknown < PoseChain.JointCount + 3
            ? .5 * (Point3.Cross(was.Turned.X, now.Turned.X) + Point3.Cross(was.Turned.Y, now.Turned.Y) + Point3.Cross(was.Turned.Z, now.Turned.Z))
            : now.Origin - was.Origin;
        return ((unknown - PoseChain.JointCount) % 3) switch { 0 => strayed.XH, 1 => strayed.YH, _ => strayed.ZH };
    }

    private static bool IsStopped(PoseChain at, int joint, double pull) =>
        (at.AnglesRad[joint] <= PoseChain.LeastRad[joint] && pull > 0) || (at.AnglesRad[joint] >= PoseChain.MostRad[joint] && pull < 0);

    // Cholesky of the damped square, then two triangles.
    private static void Solve(double[] square, double[] pull, double damping, PoseChain at, double[] step)
    {
        var root = (double[])square.Clone();
        for (var i = 0; i < N; i++)
        {
            step[i] = -pull[i];
            root[i * N + i] += damping;
            if (i >= PoseChain.JointCount || !IsStopped(at, i, pull[i])) continue;
            step[i] = 0;
            for (var j = 0; j < N; j++) root[Math.Max(i, j) * N + Math.Min(i, j)] = i == j ? 1 : 0;
        }
        for (var i = 0; i < N; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = root[i * N + j];
                for (var k = 0; k < j; k++) sum -= root[i * N + k] * root[j * N + k];
                root[i * N + j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-300)) : sum / root[j * N + j];
            }
        }
        for (var i = 0; i < N; i++)
        {
            for (var k = 0; k < i; k++) step[i] -= root[i * N + k] * step[k];
            step[i] /= root[i * N + i];
        }
        for (var i = N - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < N; k++) step[i] -= root[k * N + i] * step[k];
            step[i] /= root[i * N + i];
        }
    }
}
