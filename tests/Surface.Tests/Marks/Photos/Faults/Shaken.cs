namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The hand moves by 0.35, 0.8 or 2.5 mm on paper while the picture is taken.</summary>
internal sealed class Shaken : Fault
{
    public override string Name => "motion blur";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        (shot.MotionMm, shot.MotionRad) = (Range(severity, luck, (.15, .35), (.5, .8), (1.5, 2.5)), luck.Between(0, Math.PI));
}
