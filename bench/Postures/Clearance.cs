using Slantwise.Engines.Mechanics;

namespace Slantwise.Bench.Postures;

/// <summary>Where a body goes through the floor or through itself, to look at: flesh gives, so a little is no fault.</summary>
internal static class Clearance
{
    private const double ThroughFloorH = .015, ThroughFleshH = .022;

    public static IEnumerable<string> Of(SettledBody body)
    {
        foreach (var part in Enum.GetValues<ContactPart>())
        {
            var patch = ContactPatch.Of(part);
            foreach (var side in SegmentFigures.IsPaired(patch.Segment) ? new[] { Side.Left, Side.Right } : [Side.Middle])
            {
                if (part == ContactPart.Foot) continue;
                var depthH = -patch.Lowest(body.Skeleton.Frame(patch.Segment, side)).ZH;
                if (depthH > ThroughFloorH) yield return $"{part} {side} {depthH:0.000} under the floor";
            }
        }
        var limbs = Limbs(body.Skeleton).ToArray();
        for (var i = 0; i < limbs.Length; i++)
            for (var j = i + 1; j < limbs.Length; j++)
            {
                if (limbs[i].Chain == limbs[j].Chain || (limbs[i].Chain / 100 == limbs[j].Chain / 100 && Math.Abs(limbs[i].Chain - limbs[j].Chain) == 1)) continue;
                if (limbs[i].IsRoot && limbs[j].Chain < 100 || limbs[j].IsRoot && limbs[i].Chain < 100) continue;
                var insideH = limbs[i].RadiusH + limbs[j].RadiusH - Apart(limbs[i].From, limbs[i].To, limbs[j].From, limbs[j].To);
                if (insideH > ThroughFleshH) yield return $"{limbs[i].Name} in {limbs[j].Name} by {insideH:0.000}";
            }
    }

    /// <summary>Where two bodies go through each other by more than flesh gives.</summary>
    public static IEnumerable<string> Between(SettledBody body, SettledBody partner) =>
        from one in Limbs(body.Skeleton)
        from other in Limbs(partner.Skeleton)
        let insideH = one.RadiusH + other.RadiusH - Apart(one.From, one.To, other.From, other.To)
        where insideH > ThroughFleshH
        select $"{one.Name} in the partner's {other.Name} by {insideH:0.000}";

    // Trunk parts are two or three rods abreast; chains tell neighbours, which may overlap.
    private static IEnumerable<(string Name, int Chain, bool IsRoot, Point3 From, Point3 To, double RadiusH)> Limbs(Skeleton s)
    {
        var (low, mid, up, head) = (s.Frame(SegmentKind.LowerTrunk, Side.Middle), s.Frame(SegmentKind.MiddleTrunk, Side.Middle), s.Frame(SegmentKind.UpperTrunk, Side.Middle), s.Frame(SegmentKind.Head, Side.Middle));
        yield return ("pelvis", 0, false, low.At(new(-.01, -.04, .03)), low.At(new(-.01, .04, .03)), .05);
        yield return ("waist", 1, false, mid.At(new(0, -.035, .04)), mid.At(new(0, .035, .04)), .045);
        yield return ("chest", 2, false, up.At(new(0, -.05, .03)), up.At(new(0, .05, .03)), .048);
        yield return ("head", 3, false, head.At(new(.005, 0, BodyLengths.NeckH + .055)), head.At(new(.005, 0, BodyLengths.NeckH + BodyLengths.HeadH - .055)), .053);
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var chain = side == Side.Left ? 100 : 200;
            var (arm, fore, hand) = (s.Frame(SegmentKind.UpperArm, side), s.Frame(SegmentKind.Forearm, side), s.Frame(SegmentKind.Hand, side));
            yield return ($"{side} upper arm", chain, true, arm.At(new(0, 0, -.06)), fore.Origin, .024);
            yield return ($"{side} forearm", chain + 1, false, fore.Origin, hand.Origin, .02);
            yield return ($"{side} hand", chain + 2, false, hand.Origin, hand.At(new(0, 0, -BodyLengths.HandH)), .012);
            chain += 200;
            var (thigh, shank, foot) = (s.Frame(SegmentKind.Thigh, side), s.Frame(SegmentKind.Shank, side), s.Frame(SegmentKind.Foot, side));
            yield return ($"{side} thigh", chain, true, thigh.At(new(0, 0, -.07)), shank.Origin, .04);
            yield return ($"{side} shank", chain + 1, false, shank.Origin, foot.Origin, .028);
            yield return ($"{side} foot", chain + 2, false, foot.At(new(-.02, 0, -.02)), foot.At(new(.1, 0, -.025)), .018);
        }
    }

    // The distance between two rods, by halving steps along both: near enough to judge by.
    private static double Apart(Point3 a, Point3 b, Point3 c, Point3 d)
    {
        var nearestH = double.PositiveInfinity;
        for (var i = 0; i <= 20; i++)
            for (var j = 0; j <= 20; j++)
                nearestH = Math.Min(nearestH, (a + i / 20.0 * (b - a) - c - j / 20.0 * (d - c)).LengthH);
        return nearestH;
    }
}
