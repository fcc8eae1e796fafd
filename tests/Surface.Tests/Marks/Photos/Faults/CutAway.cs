namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>An edge of the sheet lies outside the picture: paper only, a black square, fields.</summary>
internal sealed class CutAway : Fault
{
    public override string Name => "cut off";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.FillFraction = Range(severity, luck, (1, 1.03), (1.06, 1.12), (1.2, 1.5));
}
