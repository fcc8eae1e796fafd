using MathNet.Numerics.LinearAlgebra;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Bench.Postures;

/// <summary>A hand that lies on the body: on a shin, on the back. The engine's search knows parts that rest on top of each other only.</summary>
/// <param name="Hand">The hand, its middle.</param>
/// <param name="To">The part it is laid on.</param>
/// <param name="By">From the middle of that part, in its segment's own axes.</param>
/// <param name="KeepsElbow">Whether the elbow stays where it is, because it carries.</param>
internal sealed record Reach(Contact Hand, Contact To, Point3 By, bool KeepsElbow)
{
    // Towards the first guess, against a goal's 1.
    private const double StayNear = .01, StepRad = 1e-6, Damping = 1e-5;
    private Joint[] Arm => KeepsElbow ? [Joint.ShoulderRotation, Joint.ElbowFlexion] : [Joint.ShoulderFlexion, Joint.ShoulderAbduction, Joint.ShoulderRotation, Joint.ElbowFlexion];

    /// <summary>The pose with this arm laid there, as near as its joints' limits let it.</summary>
    public Pose Of(Pose pose)
    {
        var start = Angles(pose);
        var now = start;
        for (var round = 0; round < 60; round++)
        {
            var missed = Missed(pose, now, start);
            var slopes = Matrix<double>.Build.Dense(missed.Count, Arm.Length);
            for (var i = 0; i < Arm.Length; i++)
            {
                var moved = now.Clone();
                moved[i] += StepRad;
                slopes.SetColumn(i, (Missed(pose, moved, start) - missed) / StepRad);
            }
            var square = slopes.TransposeThisAndMultiply(slopes) + Matrix<double>.Build.DenseDiagonal(Arm.Length, Damping);
            var step = square.Cholesky().Solve(slopes.TransposeThisAndMultiply(missed));
            now -= Math.Min(1, .2 / Math.Max(1e-9, step.AbsoluteMaximum())) * step;
            for (var i = 0; i < Arm.Length; i++)
            {
                var (leastDeg, mostDeg) = JointLimits.Of(Arm[i]);
                now[i] = Math.Clamp(now[i], leastDeg * Math.PI / 180, mostDeg * Math.PI / 180);
            }
        }
        return With(pose, now);
    }

    /// <summary>How far the hand is from its place, in statures.</summary>
    public double MissedH(Pose pose)
    {
        var skeleton = Skeleton.Of(pose);
        var (own, on) = (ContactPatch.Of(Hand.Part), ContactPatch.Of(To.Part));
        return (skeleton.Frame(own.Segment, Hand.Side).At(own.Centre) - skeleton.Frame(on.Segment, To.Side).At(on.Centre + By)).LengthH;
    }

    private Vector<double> Missed(Pose pose, Vector<double> at, Vector<double> start)
    {
        var skeleton = Skeleton.Of(With(pose, at));
        var (own, on) = (ContactPatch.Of(Hand.Part), ContactPatch.Of(To.Part));
        var apart = skeleton.Frame(own.Segment, Hand.Side).At(own.Centre) - skeleton.Frame(on.Segment, To.Side).At(on.Centre + By);
        return Vector<double>.Build.DenseOfEnumerable([apart.XH, apart.YH, apart.ZH, .. StayNear * (at - start)]);
    }

    private Vector<double> Angles(Pose pose) => Vector<double>.Build.DenseOfEnumerable(Arm.Select(j => pose.AngleRad(j, Hand.Side)));

    private Pose With(Pose pose, Vector<double> angles)
    {
        for (var i = 0; i < Arm.Length; i++) pose = pose.With(Arm[i], Hand.Side, angles[i]);
        return pose;
    }
}
