using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>Rubs a pencil mark out: a pale trace of it stays, and a smear.</summary>
internal static class Rubber
{
    public static void Rub(Leaf leaf, MarkField field, IReadOnlyList<Stroke> strokes, Ink ink, double leftFraction, Luck luck)
    {
        leaf.Draw(strokes, new Ink(ink.DarkFraction * leftFraction, .6, .4), luck.Bits());
        var middle = new Point(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
        var across = new Point(field.WidthMm * luck.Between(.5, .8), 0).Turned(luck.Between(0, Math.PI));
        leaf.Draw([new([middle - across, middle + across], field.HeightMm * luck.Between(.6, 1))], new Ink(luck.Between(.02, .05 + leftFraction * .15), .3, 1.5), luck.Bits());
    }
}
