using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Records.Words;
using static Slantwise.Records.Postures.Figures.Descriptions.HeldBody;

namespace Slantwise.Records.Postures.Figures.Descriptions;

/// <summary>How the legs are held: as a pair, or the free one of two.</summary>
internal static class DescribedLegs
{
    private const double AlikeDeg = 25;
    private const double BentDeg = 25;
    private const double FoldedDeg = 40;
    private const double DeepDeg = 85;
    private const double AstrideDeg = 38;
    private const double InLineDeg = 25;
    private const double StackedDeg = 12;
    private const double NearH = .11;

    public static IEnumerable<string> Of(HeldBody body, CultureInfo culture)
    {
        var carried = Sides.Where(s => Carries(body, s)).ToArray();
        if (carried.Length == 1) return Free(body, Other(carried[0]), culture);
        var kneeling = Sides.Where(s => Kneels(body, s)).ToArray();
        // Who kneels has said so by what touches; the other leg may be stretched away.
        if (carried.Length == 2 && kneeling.Length > 0)
            return kneeling.Length == 1 && !IsBent(body, Other(kneeling[0])) ? Free(body, Other(kneeling[0]), culture) : [];
        return IsPair(body) ? Pair(body, carried.Length == 2, culture) : Stride(body, culture);
    }

    private static bool Carries(HeldBody body, Side side) => Kneels(body, side)
        || body.Touches(side, ContactPart.Foot, ContactPart.Toes, ContactPart.Heel, ContactPart.Instep);

    private static bool Kneels(HeldBody body, Side side) => body.Touches(side, ContactPart.Knee, ContactPart.Shank);

    private static bool IsBent(HeldBody body, Side side) => body.BendDeg(Joint.KneeFlexion, side) > BentDeg;

    private static bool IsPair(HeldBody body) =>
        Math.Abs(body.BendDeg(Joint.KneeFlexion, Side.Left) - body.BendDeg(Joint.KneeFlexion, Side.Right)) < AlikeDeg
        && Math.Abs(body.BendDeg(Joint.HipFlexion, Side.Left) - body.BendDeg(Joint.HipFlexion, Side.Right)) < AlikeDeg;

    private static IEnumerable<string> Pair(HeldBody body, bool carry, CultureInfo culture)
    {
        var kneeDeg = Sides.Average(s => body.BendDeg(Joint.KneeFlexion, s));
        var hipDeg = Sides.Average(s => AngleDeg(Leg(body, s, toKnee: true), -1 * body.TrunkUp));
        var apartDeg = AngleDeg(Leg(body, Side.Left, toKnee: false), Leg(body, Side.Right, toKnee: false));
        var isLifted = !carry && Sides.All(s => body.Ankle(s).ZH > body.Hip(s).ZH) && body.TrunkUp.ZH > -.3;
        yield return PostureWords.Text(
            kneeDeg > DeepDeg ? !carry && hipDeg > 70 ? "LegsTucked" : carry && body.TrunkUp.ZH > .3 ? "KneesDeep" : "KneesBent"
            : kneeDeg > BentDeg ? "KneesBent"
            : apartDeg > AstrideDeg ? "LegsAstride"
            : isLifted ? "LegsRaised"
            : hipDeg < InLineDeg && Math.Abs(body.TrunkUp.ZH) < .75 ? "BodyStraight"
            : carry && body.TrunkUp.ZH > .3 ? "LegsStraight"
            : "LegsTogether", culture);
    }

    private static IEnumerable<string> Free(HeldBody body, Side side, CultureInfo culture)
    {
        var isStanding = body.Carries(Other(side), ContactPart.Foot, ContactPart.Toes)
            && !Sides.Any(s => body.Carries(s, ContactPart.Hand, ContactPart.Forearm, ContactPart.Fingertips));
        yield return IsBent(body, side) && body.BendDeg(Joint.KneeFlexion, side) > FoldedDeg
            ? Bent(body, side, culture)
            : PostureWords.Text(Straight(body, side, isStanding), culture, Name("Leg", side, culture));
        if (isStanding && IsBent(body, Other(side))) yield return PostureWords.Text("KneeBent", culture, Name("Knee", Other(side), culture));
    }

    // Where a straight leg points, as seen from the other one, the way the body heads and the floor.
    private static string Straight(HeldBody body, Side side, bool isStanding)
    {
        var direction = Unit(Leg(body, side, toKnee: false));
        var ahead = Dot(direction, body.Heading);
        var aside = Math.Sqrt(Math.Max(0, 1 - direction.ZH * direction.ZH - ahead * ahead));
        if (isStanding)
        {
            if (Math.Abs(ahead) < .25 && aside < .25) return "LegOff";
            return (aside > Math.Abs(ahead) ? "LegSide" : ahead < 0 ? "LegBehind" : "LegFront") + Height(body.Ankle(side).ZH - body.Hip(side).ZH);
        }
        if (AngleDeg(direction, Leg(body, Other(side), toKnee: false)) < StackedDeg && !IsBent(body, Other(side))) return "BodyStraight";
        if (aside > .7 && body.Ankle(side).ZH < body.Hip(side).ZH - .08) return "LegOut";
        return ahead < -.5 && body.TrunkFront.ZH < -.3 ? "LegBehind" : "LegUp";
    }

    private static string Bent(HeldBody body, Side side, CultureInfo culture)
    {
        var (knee, foot) = (Name("Knee", side, culture), Name("Foot", side, culture));
        var sole = body.Frame(SegmentKind.Foot, side).At(new(.04, 0, -.02));
        var (other, otherAnkle) = (body.Knee(Other(side)), body.Ankle(Other(side)));
        if (Math.Min((sole - other).LengthH, (sole - .85 * other - .15 * otherAnkle).LengthH) < NearH) return PostureWords.Text("FootAtKnee", culture, foot);
        var thigh = Unit(Leg(body, side, toKnee: true));
        if (Dot(thigh, body.Heading) < .45 || body.TrunkUp.ZH < .3)
            return Dot(thigh, body.TrunkFront) < .45 && body.TrunkUp.ZH > .3 ? PostureWords.Text("FootLifted", culture, foot) : PostureWords.Text("KneeBent", culture, knee);
        return PostureWords.Text(body.Knee(side).ZH > body.Hip(side).ZH - .10 ? "KneeRaisedHip" : "KneeRaised", culture, knee);
    }

    private static IEnumerable<string> Stride(HeldBody body, CultureInfo culture)
    {
        var leftAheadH = Dot(body.Ankle(Side.Left) - body.Ankle(Side.Right), body.Heading);
        if (Math.Abs(leftAheadH) > .2 && body.TrunkUp.ZH > .3)
        {
            var front = leftAheadH > 0 ? Side.Left : Side.Right;
            yield return PostureWords.Text("Stride", culture, Name("Foot", front, culture), Name("Leg", Other(front), culture));
        }
        var bent = Sides.Where(s => IsBent(body, s)).ToArray();
        if (bent.Length == 2) yield return PostureWords.Text("KneesBent", culture);
        foreach (var side in bent.Length == 1 ? bent : [])
            yield return PostureWords.Text("KneeBent", culture, Name("Knee", side, culture));
    }

    private static string Height(double aboveHipH) => aboveHipH > .12 ? "High" : aboveHipH > -.10 ? "Hip" : "";

    private static Point3 Leg(HeldBody body, Side side, bool toKnee) => (toKnee ? body.Knee(side) : body.Ankle(side)) - body.Hip(side);

    private static string Name(string limb, Side side, CultureInfo culture) => PostureWords.Text(limb + side, culture);
}
