using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Records.Words;
using static Slantwise.Records.Postures.Figures.Descriptions.HeldBody;

namespace Slantwise.Records.Postures.Figures.Descriptions;

/// <summary>How the arms that carry nothing are held.</summary>
internal static class DescribedArms
{
    private const double NearH = .10;
    private const double BentDeg = 40;

    public static IEnumerable<string> Of(HeldBody body, CultureInfo culture)
    {
        var free = Sides.Where(s => !body.Touches(s, ContactPart.Hand, ContactPart.Fingertips, ContactPart.Forearm, ContactPart.Elbow))
            .Select(side => (Side: side, How: How(body, side))).Where(arm => arm.How.Length > 0).ToArray();
        if (free.Length == 2 && free[0].How == free[1].How) return [PostureWords.Text("Arms" + free[0].How, culture)];
        return free.Select(arm => PostureWords.Text("Arm" + (free.Length == 1 && IsUp(body, arm.Side) ? "Up" : arm.How), culture, PostureWords.Text("Arm" + arm.Side, culture)));
    }

    // The one free arm of a body on its side or on one hand points at the ceiling rather than away from the chest.
    private static bool IsUp(HeldBody body, Side side) =>
        body.TrunkUp.ZH < .8 && Unit(body.Wrist(side) - body.Shoulder(side)).ZH > .8;

    private static string How(HeldBody body, Side side)
    {
        var chest = body.Frame(SegmentKind.UpperTrunk);
        var arm = Unit(body.Wrist(side) - body.Shoulder(side));
        var (up, front, outwards) = (Dot(arm, chest.Turned.Z), Dot(arm, chest.Turned.X), (side == Side.Left ? 1 : -1) * Dot(arm, chest.Turned.Y));
        if (body.BendDeg(Joint.ElbowFlexion, side) > BentDeg && Near(body, side) is { Length: > 0 } near) return near;
        if (Sides.Any(s => Apart(body.Palm(side), body.Knee(s), body.Ankle(s)) < NearH))
            return Sides.Min(s => (body.Palm(side) - body.Knee(s)).LengthH) < NearH ? "Knees" : "Shins";
        if (up > .75) return "Overhead";
        if (outwards > .8) return "Out";
        if (outwards > .45) return up > .3 ? "OutUp" : front > outwards ? "Front" : "OutDown";
        if (front > .6) return "Front";
        if (up < -.75 && front > -.4) return "Down";
        return front < -.4 ? "Behind" : "";
    }

    private static string Near(HeldBody body, Side side)
    {
        var pelvis = body.Frame(SegmentKind.LowerTrunk);
        var back = new[] { pelvis.At(new(-.06, 0, .06)), body.Frame(SegmentKind.MiddleTrunk).At(new(-.06, 0, .04)), body.Frame(SegmentKind.UpperTrunk).At(new(-.06, 0, .0)) };
        var hip = pelvis.At(new(0, side == Side.Left ? .09 : -.09, .05));
        if ((body.Wrist(side) - hip).LengthH < NearH || (body.Palm(side) - hip).LengthH < NearH * .7) return "Hips";
        return back.Any(b => (body.Palm(side) - b).LengthH < 1.2 * NearH) ? "Back" : "";
    }

    private static double Apart(Point3 point, Point3 from, Point3 to)
    {
        var along = to - from;
        var atFraction = Math.Clamp(Dot(point - from, along) / Dot(along, along), 0, 1);
        return (point - from - atFraction * along).LengthH;
    }
}
