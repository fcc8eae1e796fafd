namespace Slantwise.Engines.Mechanics;

/// <summary>By how much a pose misses each goal, for the search.</summary>
internal static class PoseResiduals
{
    // A radian of direction counts like a tenth of a stature: the length of a hand or foot that it would move.
    private const double DirectionH = .1;

    public static IEnumerable<double> Of(Pose pose, double hipHeightH, IReadOnlyList<PoseGoal> goals)
    {
        var skeleton = Skeleton.Of(pose).Moved(Rotation.None, new(0, 0, hipHeightH));
        return goals.SelectMany(goal => Of(skeleton, pose, goal));
    }

    public static Point3 Lowest(Skeleton skeleton, Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        return patch.Lowest(skeleton.Frame(patch.Segment, contact.Side));
    }

    private static double[] Of(Skeleton skeleton, Pose pose, PoseGoal goal) => goal switch
    {
        PoseGoal.OnFloor g => [Lowest(skeleton, g.Contact).ZH],
        PoseGoal.Flat g => Flat(skeleton, g.Contact),
        PoseGoal.Apart g => Difference((Lowest(skeleton, g.Contact) - Lowest(skeleton, g.From)).OnFloor, g.By),
        PoseGoal.Resting g => Resting(skeleton, g),
        PoseGoal.CentreOver g => Difference((skeleton.CentreOfMass(BodyTable.Mean) - Lowest(skeleton, g.From)).OnFloor, g.By),
        PoseGoal.Angle g => [DirectionH * (pose.AngleRad(g.Joint, g.Side) - g.AngleRad)],
        _ => throw new ArgumentOutOfRangeException(nameof(goal), goal, "No such goal."),
    };

    private static double[] Difference(Point2 have, Point2 want) => [have.XH - want.XH, have.YH - want.YH];

    private static double[] Flat(Skeleton skeleton, Contact contact)
    {
        var patch = ContactPatch.Of(contact.Part);
        var turned = skeleton.Frame(patch.Segment, contact.Side).Turned;
        // The sole faces down in its own axes; the palm faces the body: right for the left hand.
        var outward = patch.Segment == SegmentKind.Hand ? turned.Of(new(0, contact.Side == Side.Left ? -1 : 1, 0)) : turned.Of(new(0, 0, -1));
        return [DirectionH * outward.XH, DirectionH * outward.YH, DirectionH * Math.Max(0, outward.ZH)];
    }

    private static double[] Resting(Skeleton skeleton, PoseGoal.Resting goal)
    {
        var (upper, lower) = (ContactPatch.Of(goal.Contact.Part), ContactPatch.Of(goal.On.Part));
        var apart = skeleton.Frame(upper.Segment, goal.Contact.Side).At(upper.Centre) - skeleton.Frame(lower.Segment, goal.On.Side).At(lower.Centre);
        return [apart.XH, apart.YH, apart.ZH - (upper.RadiusH + lower.RadiusH)];
    }
}
