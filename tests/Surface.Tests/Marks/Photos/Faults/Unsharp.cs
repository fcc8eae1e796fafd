namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Out of focus: a bell of 0.18, 0.35 or 0.9 mm on paper.</summary>
internal sealed class Unsharp : Fault
{
    public override string Name => "defocus";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.DefocusMm = Range(severity, luck, (.1, .18), (.22, .35), (.6, .9));
}
