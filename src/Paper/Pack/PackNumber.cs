using Slantwise.Engines.Drawing;
using Slantwise.Paper.Layout;
using Slantwise.Paper.Words;

namespace Slantwise.Paper.Pack;

/// <summary>Numbers the pages of a pack in their bottom margin, where no form has anything to read.</summary>
internal static class PackNumber
{
    private const double FromEdgeMm = 6.5;

    public static PrintedPage On(PrintedPage page, int number, int count, CardWords words)
    {
        if (page.Scene.Shapes.Count == 0) return page;
        // Under the middle of the first form: between two of them stand their squares.
        var middle = page.Forms.Count > 0 && page.Forms[0].ScaleFraction < 1 ? page.Scene.WidthMm / 4 : page.Scene.WidthMm / 2;
        Shape text = new Text(middle, page.Scene.HeightMm - FromEdgeMm, words.Of("PackPage", number, count), TypeScale.Usual.SmallPt, Tone.Muted, TextAnchor.Middle);
        return page with { Scene = page.Scene with { Shapes = [.. page.Scene.Shapes, text] } };
    }
}
