using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;

namespace Slantwise.Engines.Tests.Drawing.Charts;

public sealed class ChartsTests
{
    private static readonly ScaleText Axis = new("none", "half", "all");

    [Fact]
    public void RangeChart_EnoughTries_DrawsABarFromLowToHighAndAFilledDot()
    {
        var scene = RangeChart.Of([new("level 2", 0.5, 0.25, 0.75, "5 of 10", false)], 83.2, Axis, "Level 2: 5 of 10.");

        // By hand: the scale is 80 mm long and begins 1.6 mm from the left.
        var bar = Assert.Single(scene.Shapes.OfType<Box>(), b => b.Tone == Tone.AccentSoft);
        Assert.Equal(1.6 + 20, bar.XMm, 1e-9);
        Assert.Equal(40, bar.WidthMm, 1e-9);
        var dot = Assert.Single(scene.Shapes.OfType<Disc>());
        Assert.Equal((41.6, 0.0), (Math.Round(dot.XMm, 9), dot.StrokeMm));
        Assert.Equal("Level 2: 5 of 10.", scene.Description);
    }

    [Fact]
    public void RangeChart_FewTries_DrawsADashedLineAndAHollowDot()
    {
        var scene = RangeChart.Of([new("level 2", 0.5, 0.25, 0.75, "1 of 2", true)], 83.2, Axis, "d");

        var line = Assert.Single(scene.Shapes.OfType<Line>(), l => l.IsDashed);
        Assert.Equal((21.6, 61.6), (Math.Round(line.X1Mm, 9), Math.Round(line.X2Mm, 9)));
        Assert.Contains(scene.Shapes.OfType<Disc>(), d => d.StrokeMm > 0);
        Assert.DoesNotContain(scene.Shapes.OfType<Disc>(), d => d is { StrokeMm: 0, Tone: not Tone.Ground });
    }

    [Fact]
    public void RangeChart_RowWithoutTries_SaysSoInWords()
    {
        var scene = RangeChart.Of([new("level 5", null, null, null, "n = 0", true, "not tried by anybody")], 80, Axis, "d");
        Assert.Contains(scene.Shapes.OfType<Text>(), t => t.Content == "not tried by anybody");
        Assert.Empty(scene.Shapes.OfType<Disc>());
    }

    [Fact]
    public void RangeChart_LongLabel_EndsBeforeTheCount()
    {
        var label = new string('m', 200);
        var scene = RangeChart.Of([new(label, 0.5, 0.25, 0.75, "5 of 10", false)], 60, Axis, "d");
        var drawn = scene.Shapes.OfType<Text>().Single(t => t.Content.StartsWith('m')).Content;
        Assert.EndsWith("…", drawn);
        Assert.InRange(drawn.Length, 10, 40);
    }

    [Theory]
    [InlineData(0.5, 0.6, 0.9)]
    [InlineData(0.5, 0.2, 0.4)]
    [InlineData(1.5, 0.2, 2.0)]
    public void RangeChart_ShareOutsideItsRange_Throws(double share, double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeChart.Of([new("x", share, low, high, "", false)], 80, Axis, "d"));

    [Fact]
    public void RangeChart_ShareWithoutRange_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeChart.Of([new("x", 0.5, null, null, "", false)], 80, Axis, "d"));

    [Fact]
    public void TickBars_TwoRows_FillsAsFarAsLeftOpen()
    {
        var scene = TickBars.Of([new("cue 1", 5, 20, "5 of 20"), new("cue 2", 0, 10, "0 of 10")], 80.4, "d");

        // By hand: 80 mm for 20 sets is 4 mm a set.
        var filled = Assert.Single(scene.Shapes.OfType<Box>(), b => b.StrokeMm == 0);
        Assert.Equal(20, filled.WidthMm, 1e-9);
        Assert.Equal([80.0, 40.0], scene.Shapes.OfType<Box>().Where(b => b.StrokeMm > 0).Select(b => Math.Round(b.WidthMm, 9)));
    }

    [Fact]
    public void TickBars_MoreOpenThanChecked_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TickBars.Of([new("cue", 3, 2, "")], 80, "d"));

    [Fact]
    public void LevelSteps_TwoSets_StandsTheTriesOnTheStairs()
    {
        var scene = LevelSteps.Of([new(1, [true, false], 1), new(2, [true, true], 1)], 2, ["lesson 1"], "?", 86, "d");

        // By hand: two lanes of 8 mm; stairs 1 mm above a lane's foot, level 2 at 7 mm, level 1 at 15 mm; 40 mm a set after 6 mm.
        var stairs = Assert.Single(scene.Shapes.OfType<Outline>()).Steps;
        Assert.Equal([(6.0, 15.0), (6.0, 15.0), (46.0, 15.0), (46.0, 7.0), (86.0, 7.0)], stairs.Select(s => (s.XMm, s.YMm)));
        Assert.Equal(3, scene.Shapes.OfType<Disc>().Count(d => d is { StrokeMm: 0, Tone: Tone.Accent }));
        Assert.Single(scene.Shapes.OfType<Disc>(), d => d.StrokeMm > 0);
    }

    [Fact]
    public void LevelSteps_SetWithoutLevel_BreaksTheStairsAndGetsItsLane()
    {
        var scene = LevelSteps.Of([new(1, [true], 1), new(null, [true], 1), new(2, [true], 2)], 2, ["a", "b"], "?", 86, "d");
        Assert.Equal(2, scene.Shapes.OfType<Outline>().Count());
        Assert.Contains(scene.Shapes.OfType<Text>(), t => t.Content == "?");
        Assert.Equal(3 * 8 + 5, scene.HeightMm);
    }

    [Fact]
    public void LevelSteps_ImpossibleSteps_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LevelSteps.Of([new(3, [], 1)], 2, ["a"], "?", 80, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => LevelSteps.Of([], 0, [], "?", 80, "d"));
        Assert.Throws<ArgumentException>(() => LevelSteps.Of([new(1, [], 2), new(1, [], 1)], 2, ["a", "b"], "?", 80, "d"));
        Assert.Throws<ArgumentException>(() => LevelSteps.Of([new(1, [], 1)], 2, [], "?", 80, "d"));
    }

    [Fact]
    public void Charts_TooNarrow_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RangeChart.Of([], 39, Axis, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => TickBars.Of([], double.NaN, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => LevelSteps.Of([], 1, [], "?", 39, "d"));
    }

    [Fact]
    public void LevelSteps_AnySets_DrawsEveryTryOnceAndInsideThePage() => Gen
        .Select(Gen.Select(Gen.Int[0, 5], Gen.Bool.Array[0, 10]).Select((l, t) => new LevelStep(l == 0 ? null : l, t, 1)).Array[0, 20], Gen.Double[60, 120])
        .Sample((steps, widthMm) =>
        {
            var scene = LevelSteps.Of(steps, 5, steps.Length == 0 ? [] : ["lesson"], "?", widthMm, "d");
            var discs = scene.Shapes.OfType<Disc>().ToList();
            Assert.Equal(steps.Sum(s => s.Trials.Count(t => t)), discs.Count(d => d is { StrokeMm: 0, Tone: Tone.Accent }));
            Assert.Equal(steps.Sum(s => s.Trials.Count(t => !t)), discs.Count(d => d.StrokeMm > 0));
            foreach (var disc in discs)
            {
                Assert.InRange(disc.XMm, disc.RadiusMm, scene.WidthMm - disc.RadiusMm);
                Assert.InRange(disc.YMm, disc.RadiusMm, scene.HeightMm - disc.RadiusMm);
            }
        });
}
