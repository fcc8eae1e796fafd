using Slantwise.Engines.Drawing;

namespace Slantwise.Paper.Sheets;

/// <summary>A page as it looks on cream paper.</summary>
internal static class Cream
{
    public static PrintedPage Of(PrintedPage page)
    {
        var scene = page.Scene;
        Shape ground = new Box(0, 0, scene.WidthMm, scene.HeightMm, Tone.Cream);
        return page with { Scene = scene with { Shapes = [ground, .. scene.Shapes.Select(Tinted)] } };
    }

    // What is cut out shows the paper.
    private static Shape Tinted(Shape shape)
    {
        var tinted = shape.Tone == Tone.Ground ? shape with { Tone = Tone.Cream } : shape;
        return tinted is Outline { Inside: Tone.Ground } outline ? outline with { Inside = Tone.Cream } : tinted;
    }
}
