using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;

namespace Slantwise.Engines.Tests.Drawing.Charts;

public sealed class HeldStepsTests
{
    private static readonly ScaleText Share = new("none", "half", "all"), Time = new("0 s", "5 s", "10 s");

    [Fact]
    public void Of_TwoSteps_DrawsStairsAndTheBandBetweenThem()
    {
        var scene = HeldSteps.Of([new(5, 0.6, 0.5, 0.7, false), new(10, 0.2, 0.1, 0.4, true)], 96, Share, Time, "d");

        // By hand: 80 mm for 10 s from 13 mm on, 30 mm for a share of 1 from 3 mm down.
        var stairs = scene.Shapes.OfType<Line>().Where(l => l.Tone == Tone.Accent).ToList();
        Assert.Equal(
            [(13, 3, 53, 3, false), (53, 3, 53, 15, false), (53, 15, 93, 15, true), (93, 15, 93, 27, true)],
            stairs.Select(l => (Math.Round(l.X1Mm, 9), Math.Round(l.Y1Mm, 9), Math.Round(l.X2Mm, 9), Math.Round(l.Y2Mm, 9), l.IsDashed)));
        var band = Assert.Single(scene.Shapes.OfType<Box>());
        Assert.Equal((53, 12, 40, 6), (Math.Round(band.XMm, 9), Math.Round(band.YMm, 9), Math.Round(band.WidthMm, 9), Math.Round(band.HeightMm, 9)));
        Assert.Equal(["none", "half", "all", "0 s", "5 s", "10 s"], scene.Shapes.OfType<Text>().Select(t => t.Content));
        Assert.Equal((96.0, 39.0, "d"), (scene.WidthMm, scene.HeightMm, scene.Description));
    }

    [Fact]
    public void Of_NoRange_DrawsNoBand() =>
        Assert.Empty(HeldSteps.Of([new(2, 1, null, null, false), new(4, 0.5, null, null, false)], 60, Share, Time, "d").Shapes.OfType<Box>());

    [Fact]
    public void Of_StepsThatAreNone_Refuses()
    {
        Assert.Throws<ArgumentException>(() => HeldSteps.Of([], 80, Share, Time, "d"));
        Assert.Throws<ArgumentException>(() => HeldSteps.Of([new(0, 0.5, null, null, false)], 80, Share, Time, "d"));
        Assert.Throws<ArgumentException>(() => HeldSteps.Of([new(2, 0.5, null, null, false), new(2, 0.4, null, null, false)], 80, Share, Time, "d"));
        Assert.Throws<ArgumentException>(() => HeldSteps.Of([new(double.NaN, 0.5, null, null, false)], 80, Share, Time, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeldSteps.Of([new(1, 0.5, null, null, false), new(2, 0.6, null, null, false)], 80, Share, Time, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeldSteps.Of([new(1, 0.5, 0.6, 0.7, false)], 80, Share, Time, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeldSteps.Of([new(1, 0.5, 0.4, null, false)], 80, Share, Time, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeldSteps.Of([new(1, 0.5, null, null, false)], 30, Share, Time, "d"));
    }
}
