namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Black and white only, at 200 or 150 dots an inch, cut too dark or too pale.</summary>
internal sealed class Faxed : Fault
{
    public override string Name => "black and white scan";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
        Scanner.Set(shot, widthMm * heightMm, Range(severity, luck, (200, 240), (150, 170), (90, 100)), Range(severity, luck, (0, 1), (1, 3), (3, 6)), luck);
        shot.CutFraction = luck.Happens(.5) ? Range(severity, luck, (.72, .8), (.6, .68), (.35, .45)) : Range(severity, luck, (.75, .82), (.84, .88), (.92, .96));
        (shot.NoiseSd, shot.JpegQuality) = (Range(severity, luck, (2, 5), (5, 10), (12, 20)), 0);
    }
}
