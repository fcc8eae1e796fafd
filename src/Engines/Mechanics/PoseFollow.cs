namespace Slantwise.Engines.Mechanics;

/// <summary>A pose that follows a hand which drags a part of it, while its contacts stay.</summary>
/// <param name="Placed">The pose found, and where it is.</param>
/// <param name="MissedH">By how much the wishes are missed at most, in statures.</param>
/// <param name="StrayedH">By how much what had to stay has moved at most, in statures; a direction counts a tenth of its radians.</param>
/// <param name="Stops">What keeps a missed wish from being met, the strongest first; empty where it is met or where nothing is at its end.</param>
public sealed record PoseFollow(PlacedPose Placed, double MissedH, double StrayedH, IReadOnlyList<JointStop> Stops)
{
    /// <summary>A wish missed by more than this is said to have stopped: under a centimetre of a child.</summary>
    public const double MetH = .006;

    private const int RoundsAtMost = 60;
    // A thousand to one in what is squared: a wish out of reach moves a contact by less than a millimetre of a child. An angle counts
    // a tenth of its radians, and is set to the degree.
    private const double Kept = 10, KeptLoosely = 1, Wanted = .3, WantedAngle = 3;
    // What is dragged moves its own limb first, the trunk last.
    private const double LimbStays = .0015, BodyStays = .006, RestStays = .05;
    private const int LeftArm = 6, LeftLeg = 12, RightArm = 17, RightLeg = 23, Hips = -1, Trunk = -2;
    private const double StraightRad = 5 * Math.PI / 180;

    /// <summary>The pose that meets the wishes as far as the joints allow.</summary>
    /// <param name="from">Where to begin: the last pose of the drag.</param>
    /// <param name="near">What the pose stays near to: the pose at the beginning of the drag. Its floor is that of the goals.</param>
    /// <param name="kept">What stays as it is, at least one.</param>
    /// <param name="wanted">What is dragged, at least one.</param>
    /// <returns>Always within the joints' limits, and the same for the same arguments.</returns>
    /// <exception cref="ArgumentException">Nothing that stays, or nothing that is wanted.</exception>
    /// <remarks>Source: [Marquardt1963], with weights.</remarks>
    public static PoseFollow Fit(PlacedPose from, PlacedPose near, IReadOnlyList<PoseGoal> kept, IReadOnlyList<PoseGoal> wanted)
    {
        if (kept.Count == 0) throw new ArgumentException("Something has to stay where it is.", nameof(kept));
        if (wanted.Count == 0) throw new ArgumentException("Something has to be wanted.", nameof(wanted));
        PoseGoal[] goals = [.. kept, .. wanted];
        var stays = Stays(wanted);
        PoseDescent Descent(double keptPull) => new(near, goals, [.. goals.Select((goal, i) => i < kept.Count ? keptPull : goal is PoseGoal.Angle ? WantedAngle : Wanted)], stays);
        // First loosely, since a strong pull lets only short steps pass, then strictly.
        var (loose, _) = Descent(KeptLoosely).From(from, RoundsAtMost);
        var descent = Descent(Kept);
        var (chain, _) = descent.From(loose.Pose(near.Pose), RoundsAtMost);
        var missedH = PoseResiduals.MostMissedH(chain, wanted);
        return new PoseFollow(
            chain.Pose(near.Pose), missedH, PoseResiduals.MostMissedH(chain, kept),
            missedH <= MetH ? [] : [.. Straight(chain, [.. wanted, .. kept]), .. descent.Stops(chain)]);
    }

    private static double[] Stays(IReadOnlyList<PoseGoal> wanted)
    {
        var stays = new double[PoseChain.UnknownCount];
        // A dragged hand is followed by its arm, and by the body only where the arm does not reach; dragged hips or shoulders take the rest along.
        Array.Fill(stays, wanted.All(w => Limb(w) >= 0) ? RestStays : BodyStays, 0, PoseChain.JointCount + 3);
        foreach (var wish in wanted)
            foreach (var (first, count) in Free(Limb(wish))) Array.Fill(stays, LimbStays, first, count);
        return stays;
    }

    // Which joints a wish moves first: those of its limb; the legs for the hips, the spine and the neck for shoulders and head.
    private static (int First, int Count)[] Free(int limb) => limb switch
    {
        LeftArm or RightArm => [(limb, 6)],
        LeftLeg or RightLeg => [(limb, 5)],
        Hips => [(LeftLeg, 5), (RightLeg, 5)],
        _ => [(0, 6)],
    };

    // A knee or an elbow that is as straight as it gets, of the limb that is dragged and of those that stand on something.
    private static IEnumerable<JointStop> Straight(PoseChain chain, IReadOnlyList<PoseGoal> goals) =>
        from limb in goals.Select(Limb).Where(l => l >= 0).Distinct()
        let hinge = limb + 3
        where Math.Abs(chain.AnglesRad[hinge]) < StraightRad
        select new JointStop(Pose.JointsInOrder[hinge].Joint, Pose.JointsInOrder[hinge].Side, JointStopKind.Straight);

    // The first joint of the limb that a wish is about; less than 0 for hips and trunk. A limb's upper end moves with what carries it.
    private static int Limb(PoseGoal wish) => wish switch
    {
        PoseGoal.Seen g => Limb(g.Segment, g.Side),
        PoseGoal.Placed g => Limb(ContactPatch.Of(g.Contact.Part).Segment, g.Contact.Side),
        PoseGoal.Angle { Joint: >= Joint.HipFlexion } g => Limb(SegmentKind.Shank, g.Side),
        PoseGoal.Angle { Joint: >= Joint.ShoulderFlexion } g => Limb(SegmentKind.Hand, g.Side),
        PoseGoal.Held g => Limb(ContactPatch.Of(g.Contact.Part).Segment, g.Contact.Side),
        _ => Trunk,
    };

    private static int Limb(SegmentKind segment, Side side) => segment switch
    {
        SegmentKind.Forearm or SegmentKind.Hand => side == Side.Right ? RightArm : LeftArm,
        SegmentKind.Shank or SegmentKind.Foot => side == Side.Right ? RightLeg : LeftLeg,
        SegmentKind.Thigh or SegmentKind.LowerTrunk => Hips,
        _ => Trunk,
    };
}
