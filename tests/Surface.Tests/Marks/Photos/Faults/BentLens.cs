namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Straight lines come out bent, by up to 2, 5 or 12 in 100 at the corners.</summary>
internal sealed class BentLens : Fault
{
    public override string Name => "lens distortion";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.LensFraction = luck.Sign() * Range(severity, luck, (.005, .02), (.03, .05), (.08, .12));
}
