namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A flat, even picture of the whole sheet, as a scanner with a feeder takes it.</summary>
internal static class Scanner
{
    public static void Set(Shot shot, double areaMm2, double dotsPerInch, double skewDeg, Luck luck)
    {
        var pxPerMm = dotsPerInch / 25.4;
        shot.Table = Table.Scanner;
        (shot.LeanXRad, shot.LeanYRad, shot.LensFraction, shot.FallFraction, shot.DefocusMm) = (0, 0, 0, 0, .05);
        shot.DistanceFraction = 50;
        shot.TurnRad = luck.Index(4) * Math.PI / 2 + luck.Sign() * skewDeg * Math.PI / 180;
        shot.FillFraction = .995;
        shot.MegapixelCount = areaMm2 * pxPerMm * pxPerMm / 1e6;
        shot.JpegQuality = 80;
    }
}
