namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A usual photo, nothing the matter.</summary>
internal sealed class Nothing : Fault
{
    public override string Name => "none";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
    }
}
