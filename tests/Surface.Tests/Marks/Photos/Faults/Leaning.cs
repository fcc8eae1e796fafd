namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The camera is held aslant, by up to 20, 35 or 55 degrees.</summary>
internal sealed class Leaning : Fault
{
    public override string Name => "perspective";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
        var lean = Range(severity, luck, (8, 20), (20, 35), (40, 55)) * Math.PI / 180;
        var (sin, cos) = Math.SinCos(luck.Between(0, 2 * Math.PI));
        (shot.LeanXRad, shot.LeanYRad) = (lean * cos, lean * sin);
        shot.DistanceFraction = luck.Between(1.1, 1.8);
    }
}
