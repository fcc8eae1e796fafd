using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;

namespace Slantwise.Engines.Tests.Drawing.Charts;

public sealed class BlockLineTests
{
    private static readonly BlockSpan[] Lesson = [new("talk", "min 0 to 10", 0, 600, Tone.Muted), new("practice", "min 10 to 40", 600, 2400, Tone.Accent, 0.25)];

    [Fact]
    public void Of_TwoBlocks_LieWhereTheirTimesSay()
    {
        // By hand: 100.6 mm less .3 at each side are 100 mm for 40 min: 2.5 mm a minute.
        var scene = BlockLine.Of(Lesson, null, 100.6, "d");
        var bars = scene.Shapes.OfType<Box>().Where(b => b.StrokeMm == 0 && b.Tone != Tone.Ground).ToList();
        Assert.Equal((0.3, 25), (Math.Round(bars[0].XMm, 9), Math.Round(bars[0].WidthMm, 9)));
        // A quarter of practice is waiting: 75 mm, of which 56.25 are filled and the whole is framed.
        Assert.Equal((25.3, 56.25), (Math.Round(bars[1].XMm, 9), Math.Round(bars[1].WidthMm, 9)));
        Assert.Equal(75, Assert.Single(scene.Shapes.OfType<Box>(), b => b.StrokeMm > 0).WidthMm, 1e-9);
        Assert.Equal((18.0, "d"), (scene.HeightMm, scene.Description));
    }

    [Theory]
    [InlineData(600, 25.3, TextAnchor.Start)]
    [InlineData(2400, 100.3, TextAnchor.End)]
    public void Of_AMark_StandsAtItsTimeWithItsWordsInside(double atS, double expectedMm, TextAnchor anchor)
    {
        var scene = BlockLine.Of(Lesson, new("done", atS), 100.6, "d");
        var pieces = scene.Shapes.OfType<Line>().Where(l => l.Tone == Tone.Ink).ToList();
        Assert.Equal(Lesson.Length, pieces.Count);
        Assert.All(pieces, p => Assert.Equal((expectedMm, expectedMm), (Math.Round(p.X1Mm, 9), Math.Round(p.X2Mm, 9))));
        Assert.Equal(anchor, Assert.Single(scene.Shapes.OfType<Text>(), t => t.Content == "done").Anchor);
    }

    [Fact]
    public void Of_AMarkBeyondTheEnd_MakesTheLineLonger()
    {
        // By hand: 80 min are twice as long as the blocks, so that a minute is 1.25 mm.
        var scene = BlockLine.Of(Lesson, new("done", 4800), 100.6, "d");
        Assert.Equal(12.5, scene.Shapes.OfType<Box>().First().WidthMm, 1e-9);
    }

    [Fact]
    public void Of_WhatCannotBeDrawn_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => BlockLine.Of([], null, 100, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockLine.Of(Lesson, null, 39, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockLine.Of([Lesson[0] with { EndS = 0 }], null, 100, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockLine.Of([Lesson[0] with { HollowFraction = 1.1 }], null, 100, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlockLine.Of(Lesson, new("done", -1), 100, "d"));
    }
}
