namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Grain of 8, 16 or 45 grey values.</summary>
internal sealed class Noisy : Fault
{
    public override string Name => "sensor noise";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.NoiseSd = Range(severity, luck, (4, 8), (10, 16), (30, 45));
}
