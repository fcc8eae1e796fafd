using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A ring and drops of coffee, paler or darker.</summary>
internal sealed class Stained : Fault
{
    public override string Name => "coffee stain";

    public override void OnLeaf(Leaf leaf, Severity severity, Luck luck)
    {
        var dark = Range(severity, luck, (.05, .14), (.18, .3), (.45, .65));
        var middle = new Point(luck.Between(.2, .8) * leaf.WidthMm, luck.Between(.2, .8) * leaf.HeightMm);
        leaf.Draw([Stroke.Ellipse(middle, luck.Between(32, 40), luck.Between(30, 38), luck.Between(1.5, 4))], new Ink(dark, .3, 1), luck.Bits());
        leaf.Draw([Stroke.Ellipse(middle, 17, 17, 36)], new Ink(dark * .3, .2, 2), luck.Bits());
        for (var i = 0; i < 6; i++)
        {
            var drop = middle + new Point(luck.Normal(50), luck.Normal(50));
            leaf.Draw([new([drop, drop], luck.Between(2, 8))], new Ink(dark * .8, .2, .6), luck.Bits());
        }
    }
}
