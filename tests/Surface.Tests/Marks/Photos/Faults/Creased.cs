using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>Carried in a pocket: dark and light lines across the sheet.</summary>
internal sealed class Creased : Fault
{
    public override string Name => "creases";

    public override void OnLeaf(Leaf leaf, Severity severity, Luck luck)
    {
        var count = (int)Range(severity, luck, (2, 4), (4, 8), (15, 25));
        for (var i = 0; i < count; i++)
        {
            var from = new Point(luck.Between(0, leaf.WidthMm), luck.Between(0, leaf.HeightMm));
            var to = from + new Point(luck.Between(60, 250), 0).Turned(luck.Between(0, 2 * Math.PI));
            var dark = Range(severity, luck, (.04, .1), (.1, .2), (.3, .5));
            leaf.Draw([new([from, to], luck.Between(.2, .6))], new Ink(dark, .5, luck.Between(.2, .5)), luck.Bits());
        }
    }
}
