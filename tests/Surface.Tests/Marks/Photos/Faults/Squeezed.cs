namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Kept small: quality down to 50, 25 or 6.</summary>
internal sealed class Squeezed : Fault
{
    public override string Name => "JPEG";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.JpegQuality = (int)Range(severity, luck, (50, 70), (25, 40), (6, 12));
}
