using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Records.Words;

namespace Slantwise.Records.Postures.Figures.Descriptions;

/// <summary>How the trunk is held, and whether the hips are above the head.</summary>
internal static class DescribedTrunk
{
    private const double Upright = .94;
    private const double Level = .36;
    private const double Upended = -.85;

    public static IEnumerable<string> Of(HeldBody body, CultureInfo culture)
    {
        yield return PostureWords.Text(Key(body), culture);
    }

    private static string Key(HeldBody body)
    {
        var (up, front, left) = (body.TrunkUp.ZH, body.TrunkFront.ZH, body.TrunkLeft.ZH);
        if (up < Upended) return "UpsideDown";
        if (body.Hips.ZH > body.Head.ZH && up < Level && !IsLying(body)) return "HipsAbove";
        if (Math.Abs(up) <= Level)
        {
            if (Math.Abs(left) > Math.Abs(front)) return left > 0 ? "TrunkLevelRight" : "TrunkLevelLeft";
            return front > 0
                ? body.Touches(Side.Middle, ContactPart.UpperBack, ContactPart.LowerBack) ? "LyingBack" : "TrunkLevelUp"
                : body.Touches(Side.Middle, ContactPart.Belly) ? "LyingFront" : "TrunkLevelDown";
        }
        if (up > Upright) return "TrunkUpright";
        if (Math.Abs(left) > Math.Abs(front)) return left > 0 ? "TrunkRight" : "TrunkLeft";
        return front > 0 ? "TrunkBack" : "TrunkForward";
    }

    private static bool IsLying(HeldBody body) =>
        body.Touches(Side.Middle, ContactPart.LowerBack, ContactPart.Belly) && Math.Abs(body.TrunkUp.ZH) <= Level;
}
