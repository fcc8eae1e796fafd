namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A shadow with a soft edge over a third of the sheet takes 35, 60 or 80 of 100 of the light.</summary>
internal sealed class HandShadow : Fault
{
    public override string Name => "shadow of a hand";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
        var taken = Range(severity, luck, (.15, .35), (.45, .6), (.7, .8));
        var (x, y) = (luck.Between(.1, .9) * widthMm, luck.Between(.1, .9) * heightMm);
        var soft = Range(severity, luck, (.2, .5), (.06, .2), (.03, .1));
        shot.Shades.Add(new(x, y, luck.Between(50, 90), luck.Between(35, 60), luck.Between(0, 3), soft, taken, 0));
        for (var finger = 0; finger < 3; finger++)
            shot.Shades.Add(new(x + luck.Normal(40), y + luck.Normal(40), luck.Between(30, 60), luck.Between(7, 11), luck.Between(0, 3), Math.Min(1, soft * 4), taken * .8, 0));
    }
}
