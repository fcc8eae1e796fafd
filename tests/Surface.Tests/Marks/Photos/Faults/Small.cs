namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Down to 1.8, 1 or 0.35 million pixels.</summary>
internal sealed class Small : Fault
{
    public override string Name => "low resolution";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.MegapixelCount = Range(severity, luck, (1.8, 2.4), (1, 1.3), (.25, .35));
}
