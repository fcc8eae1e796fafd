namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A lamp shines back from the paper: a patch of white.</summary>
internal sealed class Glare : Fault
{
    public override string Name => "glare";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck) =>
        shot.Shades.Add(new(luck.Between(.1, .9) * widthMm, luck.Between(.1, .9) * heightMm, luck.Between(20, 45), luck.Between(15, 30), luck.Between(0, 3),
            luck.Between(.8, 1.6), 0, Range(severity, luck, (.05, .2), (.3, .5), (.9, 1.2))));
}
