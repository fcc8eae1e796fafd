namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Too little light, and noise with it.</summary>
internal sealed class Dim : Fault
{
    public override string Name => "dim light";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        (shot.ExposureFraction, shot.NoiseSd) = (Range(severity, luck, (.6, .8), (.35, .5), (.12, .2)), Range(severity, luck, (3, 5), (5, 9), (8, 14)));
}
