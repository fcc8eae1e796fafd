namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A scanner at 200 or 150 dots an inch draws the sheet in askew, by up to 1.5, 4 or 9 degrees.</summary>
internal sealed class Scanned : Fault
{
    public override string Name => "feeder scan";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
        Scanner.Set(shot, widthMm * heightMm, Range(severity, luck, (200, 240), (150, 160), (75, 85)), Range(severity, luck, (0, 1.5), (2, 4), (6, 9)), luck);
        shot.NoiseSd = luck.Between(1, 3);
    }
}
