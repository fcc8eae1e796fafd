using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Two holes and a torn corner; hard: holes punched for a folder.</summary>
internal sealed class Stapled : Fault
{
    public override string Name => "staple holes";

    public override void OnLeaf(Leaf leaf, Severity severity, Luck luck)
    {
        var corner = new Point(luck.Between(6, 14), luck.Between(6, 14));
        foreach (var at in new[] { corner, corner + new Point(10, 3) }) leaf.Draw([new([at, at], .9)], new Ink(.8, 0, .2), 0);
        if (severity == Severity.Fair) return;
        var x = severity == Severity.Hard ? 10 : luck.Between(20, 60);
        foreach (var y in new[] { -40, 40 })
        {
            var at = new Point(x, leaf.HeightMm / 2 + y);
            leaf.Draw([new([at, at], 6)], new Ink(.75, 0, .15), 0);
        }
    }
}
