using Slantwise.Engines.Drawing.Figures;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Postures.Figures;

/// <summary>The flesh around the skeleton, as balls in statures, and how it is seen in a frame.</summary>
/// <remarks>
/// No table: our own drawing choice, a sturdy child of no particular sex, with hands, feet and head a little larger than life so that
/// they are seen at 25 mm. Parts that carry are about as thick as their contact patches.
/// </remarks>
internal static class BodyFlesh
{
    private const double BallH = .068;
    private const double ToeH = .0135;
    private const double SleeveFraction = .5;
    private const double ShortsFraction = .5;

    public static FigureBody Of(SettledBody body, FigureFrame frame, int kit)
    {
        var skeleton = body.Skeleton;
        SegmentFrame Segment(SegmentKind kind, Side side = Side.Middle) => skeleton.Frame(kind, side);
        Round[] Slice(SegmentKind kind, double zH, double xH, double halfBreadthH, double halfDepthH) =>
        [
            frame.Ball(Segment(kind).At(new(xH, halfBreadthH - halfDepthH, zH)), halfDepthH),
            frame.Ball(Segment(kind).At(new(xH, halfDepthH - halfBreadthH, zH)), halfDepthH),
        ];
        var waist = Slice(SegmentKind.MiddleTrunk, .010, -.002, .082, .051);
        // The waistband is flat: a ring of small balls instead of two big ones.
        Round Band(double xH, double yH) => frame.Ball(Segment(SegmentKind.LowerTrunk).At(new(xH, yH, .042)), .012);
        Round[][] shorts =
        [
            Slice(SegmentKind.LowerTrunk, -.012, .004, .060, .036),
            Slice(SegmentKind.LowerTrunk, .004, -.008, .092, .052),
            [Band(.040, .036), Band(.040, -.036), Band(0, .075), Band(0, -.075), Band(-.042, .036), Band(-.042, -.036)],
        ];
        Round[][] shirt =
        [
            waist,
            Slice(SegmentKind.UpperTrunk, -.010, 0, .094, .055),
            Slice(SegmentKind.UpperTrunk, .045, -.004, .104, .053),
            Slice(SegmentKind.UpperTrunk, .080, -.004, .110, .033),
            Slice(SegmentKind.UpperTrunk, .098, -.004, .040, .028),
        ];
        return new FigureBody(shorts, shirt, Head(skeleton, frame),
            [Arm(skeleton, frame, Side.Left), Arm(skeleton, frame, Side.Right), Leg(body, frame, Side.Left), Leg(body, frame, Side.Right)], kit);
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
        var elbow = frame.Ball(fore.Origin, .023);
        var thumbwards = new Point3(1, 0, 0);
        return new FigureLimb(
            [frame.Ball(upper.Origin, .033), elbow],
            [elbow, frame.Ball(hand.Origin, .017)],
            [
                [
                    frame.Ball(hand.At(new(.013, 0, -.030)), .010), frame.Ball(hand.At(new(-.013, 0, -.030)), .010),
                    frame.Ball(hand.At(new(.012, 0, -.098)), .009), frame.Ball(hand.At(new(-.010, 0, -.096)), .009),
                    frame.Ball(hand.Origin, .015),
                ],
                [frame.Ball(hand.At(.012 * thumbwards + new Point3(0, 0, -.022)), .010), frame.Ball(hand.At(.040 * thumbwards + new Point3(0, 0, -.056)), .0095)],
            ], IsArm: true, SleeveFraction);
    }

    private static FigureLimb Leg(SettledBody body, FigureFrame frame, Side side)
    {
        var skeleton = body.Skeleton;
        var (thigh, shank, foot) = (skeleton.Frame(SegmentKind.Thigh, side), skeleton.Frame(SegmentKind.Shank, side), skeleton.Frame(SegmentKind.Foot, side));
        var knee = frame.Ball(shank.Origin, .036);
        var ankle = frame.Ball(foot.Origin, .022);
        // The toes are thinner than the sole is deep: they stand on it, 0.039 below the ankle.
        Point3 Sole(double xH, double yH, double radiusH) => foot.At(new(xH, yH, radiusH - BodyLengths.AnkleHeightH));
        Round Toe(double xH, double yH, double radiusH) => frame.Ball(Sole(xH, yH, radiusH), radiusH);
        // The big toe is on the inside.
        var inH = side == Side.Left ? -.013 : .013;
        var toes = ToesRad(body, foot, side);
        Round Tip(double longH, double yH)
        {
            var (sine, cosine) = Math.SinCos(toes);
            return frame.Ball(Sole(BallH, yH, ToeH) + (longH * cosine) * foot.Turned.X + (longH * sine) * foot.Turned.Z, ToeH - .0015);
        }
        return new FigureLimb(
            [frame.Ball(thigh.At(new(0, 0, -.020)), .049), knee],
            [knee, frame.Ball(shank.At(new(-.006, 0, -.3 * BodyLengths.ShankH)), .037), ankle],
            [
                [ankle, Toe(-.017, 0, .021), Toe(BallH, .013, .016), Toe(BallH, -.013, .016)],
                [Toe(BallH, .013, ToeH), Toe(BallH, -.013, ToeH), Tip(.036, inH), Tip(.031, -inH)],
            ], IsArm: false, ShortsFraction);
    }

    // Toes that carry lie flat on the floor, whatever the foot does above them.
    private static double ToesRad(SettledBody body, SegmentFrame foot, Side side) =>
        body.Contacts.Any(c => c.Contact == new Contact(ContactPart.Toes, side))
            ? Math.Clamp(Math.Atan2(-foot.Turned.X.ZH, foot.Turned.Z.ZH), 0, Math.PI / 1.8)
            : 0;
}
