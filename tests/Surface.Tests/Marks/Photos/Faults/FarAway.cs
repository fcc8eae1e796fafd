namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The sheet takes 75, 60 or 35 of 100 of the picture's length.</summary>
internal sealed class FarAway : Fault
{
    public override string Name => "sheet small in the picture";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.FillFraction = Range(severity, luck, (.72, .85), (.55, .65), (.3, .38));
}
