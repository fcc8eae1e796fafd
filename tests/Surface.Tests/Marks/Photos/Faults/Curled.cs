namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The paper curls up along one or two sides, by up to 12, 30 or 70 mm.</summary>
internal sealed class Curled : Fault
{
    public override string Name => "curl";

    public override void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
        var count = luck.Happens(.5) ? 2 : 1;
        for (var i = 0; i < count; i++)
        {
            var along = luck.Pick([0, Math.PI / 2, Math.PI, -Math.PI / 2]) + luck.Normal(.15);
            var half = (Math.Abs(Math.Cos(along)) * widthMm + Math.Abs(Math.Sin(along)) * heightMm) / 2;
            var from = luck.Between(-.5, .3) * half;
            var rise = Range(severity, luck, (3, 12), (12, 30), (40, 70));
            shot.Bends.Add(new(along, from, 2 * rise / Math.Pow(half - from, 2), 0));
        }
    }
}
