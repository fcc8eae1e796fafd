namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>Where the points to mark are on a body of ours.</summary>
public static class LandmarkPlace
{
    /// <summary>The place of a point.</summary>
    /// <param name="skeleton">The body.</param>
    /// <param name="landmark">The point.</param>
    /// <param name="side">Left or right for a paired one; not looked at for the others.</param>
    public static Point3 Of(Skeleton skeleton, Landmark landmark, Side side) => landmark switch
    {
        Landmark.Crown => skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH)),
        Landmark.Jaw => skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH)),
        Landmark.Waist => skeleton.Frame(SegmentKind.MiddleTrunk, Side.Middle).Origin,
        Landmark.Shoulder => skeleton.Frame(SegmentKind.UpperArm, side).Origin,
        Landmark.Elbow => skeleton.Frame(SegmentKind.Forearm, side).Origin,
        Landmark.Wrist => skeleton.Frame(SegmentKind.Hand, side).Origin,
        Landmark.Fingertip => skeleton.Frame(SegmentKind.Hand, side).At(new(0, 0, -BodyLengths.HandH)),
        Landmark.Hip => skeleton.Frame(SegmentKind.Thigh, side).Origin,
        Landmark.Knee => skeleton.Frame(SegmentKind.Shank, side).Origin,
        Landmark.Ankle => skeleton.Frame(SegmentKind.Foot, side).Origin,
        Landmark.Heel => skeleton.Frame(SegmentKind.Foot, side).At(new(-BodyLengths.HeelBehindAnkleH, 0, -BodyLengths.AnkleHeightH)),
        _ => skeleton.Frame(SegmentKind.Foot, side).At(new(BodyLengths.FootH - BodyLengths.HeelBehindAnkleH, 0, -BodyLengths.AnkleHeightH)),
    };
}
