using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>A photocopier: each copy blurs a little, drives greys towards black and white, and leaves specks.</summary>
internal static class Copier
{
    public static void Copy(Leaf leaf, int times, Luck luck)
    {
        var light = new float[leaf.Values.Length];
        for (var i = 0; i < light.Length; i++) light[i] = leaf.Values[i];
        for (var copy = 0; copy < times; copy++)
        {
            Blur.Defocus(light, leaf.WidthPx, leaf.HeightPx, luck.Between(.07, .12) * leaf.PxPerMm);
            // A machine set a little darker or paler each time. Paper comes out as paper, black as black.
            var middle = (float)luck.Between(125, 165);
            for (var i = 0; i < light.Length; i++) light[i] = Math.Clamp(140 + (light[i] - middle) * 1.4f, 25, 240);
        }
        for (var i = 0; i < light.Length; i++) leaf.Values[i] = (byte)light[i];
        for (var speck = 0; speck < 40 * times; speck++)
        {
            var at = new Point(luck.Between(0, leaf.WidthMm), luck.Between(0, leaf.HeightMm));
            leaf.Draw([new([at, at], luck.Between(.1, .3))], new Ink(luck.Between(.3, .8)), 0);
        }
    }
}
