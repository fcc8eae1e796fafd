using Slantwise.Engines.Drawing.Figures;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Postures.Figures;

/// <summary>The flesh around the skeleton, as balls in statures, and how it is seen in a frame.</summary>
/// <remarks>
/// No table: our own drawing choice, a sturdy child of no particular sex, with hands, feet and head a little larger than life so that
/// they are seen at 25 mm. Parts that carry are as thick as their contact patches, so that they lie on the floor and not in it.
/// </remarks>
internal static class BodyFlesh
{
    private const double SleeveFraction = .5;
    private const double ShortsFraction = .5;

    public static FigureBody Of(Skeleton skeleton, FigureFrame frame, int kit)
    {
        SegmentFrame Segment(SegmentKind kind, Side side = Side.Middle) => skeleton.Frame(kind, side);
        Round[] Slice(SegmentKind kind, double zH, double xH, double halfBreadthH, double halfDepthH) =>
        [
            frame.Ball(Segment(kind).At(new(xH, halfBreadthH - halfDepthH, zH)), halfDepthH),
            frame.Ball(Segment(kind).At(new(xH, halfDepthH - halfBreadthH, zH)), halfDepthH),
        ];
        var hem = Slice(SegmentKind.LowerTrunk, .055, -.002, .086, .053);
        Round[][] shorts =
        [
            Slice(SegmentKind.LowerTrunk, -.026, .002, .066, .046),
            Slice(SegmentKind.LowerTrunk, .010, -.006, .094, .058),
            hem,
        ];
        Round[][] shirt =
        [
            hem,
            Slice(SegmentKind.MiddleTrunk, .030, 0, .082, .051),
            Slice(SegmentKind.UpperTrunk, -.010, 0, .094, .055),
            Slice(SegmentKind.UpperTrunk, .045, -.004, .104, .053),
            Slice(SegmentKind.UpperTrunk, .080, -.004, .096, .034),
            Slice(SegmentKind.UpperTrunk, .098, -.004, .040, .028),
        ];
        return new FigureBody(shorts, shirt, Head(skeleton, frame),
            [Arm(skeleton, frame, Side.Left), Arm(skeleton, frame, Side.Right), Leg(skeleton, frame, Side.Left), Leg(skeleton, frame, Side.Right)], kit);
    }

    private static FigureHead Head(Skeleton skeleton, FigureFrame frame)
    {
        var head = skeleton.Frame(SegmentKind.Head, Side.Middle);
        var chest = skeleton.Frame(SegmentKind.UpperTrunk, Side.Middle);
        const double crownH = .069;
        var middle = head.At(new(.006, 0, BodyLengths.NeckH + BodyLengths.HeadH - crownH));
        return new FigureHead(
            frame.Ball(middle, crownH), frame.Axis(.064 * head.Turned.X), frame.Axis(.058 * head.Turned.Y), frame.Axis(crownH * head.Turned.Z),
            [frame.Ball(chest.At(new(-.004, 0, BodyLengths.UpperTrunkH + .008)), .030), frame.Ball(head.At(new(-.004, 0, .06)), .032)]);
    }

    private static FigureLimb Arm(Skeleton skeleton, FigureFrame frame, Side side)
    {
        var (upper, fore, hand) = (skeleton.Frame(SegmentKind.UpperArm, side), skeleton.Frame(SegmentKind.Forearm, side), skeleton.Frame(SegmentKind.Hand, side));
        var elbow = frame.Ball(fore.Origin, .024);
        var thumbwards = new Point3(1, 0, 0);
        return new FigureLimb(
            [frame.Ball(upper.Origin, .033), elbow],
            [elbow, frame.Ball(fore.At(new(0, 0, -.3 * BodyLengths.ForearmH)), .0245), frame.Ball(hand.Origin, .017)],
            [
                [
                    frame.Ball(hand.At(new(.013, 0, -.030)), .012), frame.Ball(hand.At(new(-.013, 0, -.030)), .012),
                    frame.Ball(hand.At(new(.012, 0, -.096)), .011), frame.Ball(hand.At(new(-.010, 0, -.094)), .011),
                    frame.Ball(hand.Origin, .015),
                ],
                [frame.Ball(hand.At(.012 * thumbwards + new Point3(0, 0, -.022)), .010), frame.Ball(hand.At(.040 * thumbwards + new Point3(0, 0, -.056)), .0095)],
            ], IsArm: true, SleeveFraction);
    }

    private static FigureLimb Leg(Skeleton skeleton, FigureFrame frame, Side side)
    {
        var (thigh, shank, foot) = (skeleton.Frame(SegmentKind.Thigh, side), skeleton.Frame(SegmentKind.Shank, side), skeleton.Frame(SegmentKind.Foot, side));
        var knee = frame.Ball(shank.Origin, .036);
        var ankle = frame.Ball(foot.Origin, .022);
        // The toes are thinner than the sole is deep: they stand on it, 0.039 below the ankle.
        Round Toe(double xH, double yH, double radiusH) => frame.Ball(foot.At(new(xH, yH, radiusH - BodyLengths.AnkleHeightH)), radiusH);
        return new FigureLimb(
            [frame.Ball(thigh.At(new(0, 0, 0)), .052), knee],
            [knee, frame.Ball(shank.At(new(-.006, 0, -.3 * BodyLengths.ShankH)), .037), ankle],
            [
                [ankle, Toe(-.017, 0, .021), Toe(.066, .013, .016), Toe(.066, -.013, .016)],
                [Toe(.066, .013, .014), Toe(.066, -.013, .014), Toe(.101, .013, .0125), Toe(.098, -.013, .0125)],
            ], IsArm: false, ShortsFraction);
    }
}
