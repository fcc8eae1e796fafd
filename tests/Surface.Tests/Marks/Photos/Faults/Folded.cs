namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Folded in half once and opened: one half stands up by 4, 10 or 25 degrees.</summary>
internal sealed class Folded : Fault
{
    public override string Name => "fold";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.Bends.Add(new(luck.Pick([0, Math.PI / 2]) + luck.Normal(.02), luck.Normal(3), 0, Math.Tan(Range(severity, luck, (1, 4), (5, 10), (15, 25)) * Math.PI / 180)));
}
