namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A greasy lens or a light beside the camera: black becomes grey.</summary>
internal sealed class Haze : Fault
{
    public override string Name => "pale picture";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.HazeFraction = Range(severity, luck, (.1, .25), (.35, .5), (.6, .75));
}
