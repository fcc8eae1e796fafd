namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>One corner is darker, by up to 45, 65 or 90 of 100.</summary>
internal sealed class UnevenLight : Fault
{
    public override string Name => "uneven light";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        (shot.FallFraction, shot.FallRad) = (Range(severity, luck, (.2, .45), (.5, .65), (.75, .9)), luck.Between(0, 2 * Math.PI));
}
