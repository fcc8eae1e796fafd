using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;

namespace Slantwise.Engines.Tests.Drawing.Charts;

public sealed class ReachChartTests
{
    private static readonly ScaleText Axis = new("easier", "", "harder");

    private static readonly Gen<ReachRow> Rows =
        from low in Gen.Double[-2, 2]
        from width in Gen.Double[.3, 2]
        from off in Gen.Double[0, 2]
        from muted in Gen.Bool
        select new ReachRow("Ann", new ReachSpan(low, low + width), off, muted, []);

    [Fact]
    public void Of_TwoLevelsAndAPupil_LieWhereTheLineSays()
    {
        // By hand: from −1 − .4 to 1 + .4 over the width less the label and 2 mm at the right; 0 is in the middle.
        var scene = ReachChart.Of([new("1", -1), new("2", 1)], [new("A", new ReachSpan(-.5, .5), 0, false, [])], 100, Axis, "d");
        var (one, two) = (Level(scene, 0), Level(scene, 1));
        var bar = Assert.Single(Bars(scene));
        var perLogitMm = (two.X1Mm - one.X1Mm) / 2;
        Assert.Equal((98 - 12) / 2.8, perLogitMm, 1e-9);
        Assert.Equal(one.X1Mm + .5 * perLogitMm, bar.XMm, 1e-9);
        Assert.Equal(perLogitMm, bar.WidthMm, 1e-9);
        Assert.Equal("d", scene.Description);
    }

    [Fact]
    public void Of_AnyPlaces_ALineCrossesABarExactlyWhereTheLevelIsWithinReach() => Gen.Select(Rows.List[1, 8], Gen.Double[-2, 2].List[1, 6]).Sample((rows, places) =>
    {
        var lines = places.Select((at, i) => new ReachLine($"{i + 1}", at)).ToList();
        var scene = ReachChart.Of(lines, rows, 100, Axis, "d");
        var bars = Bars(scene);
        Assert.Equal(rows.Count, bars.Count);
        for (var i = 0; i < rows.Count; i++)
            for (var j = 0; j < lines.Count; j++)
            {
                var span = rows[i].Span!.Value;
                if (Math.Min(Math.Abs(places[j] - span.LowLogits), Math.Abs(places[j] - span.HighLogits)) < .05) continue;
                var isWithin = span.LowLogits < places[j] && places[j] < span.HighLogits;
                var xMm = Level(scene, j).X1Mm;
                Assert.Equal(isWithin, bars[i].XMm <= xMm && xMm <= bars[i].XMm + bars[i].WidthMm);
            }
    });

    [Fact]
    public void Of_EverythingMovedAlike_IsTheSamePicture() => Gen.Select(Rows.List[1, 6], Gen.Double[-3, 3]).Sample((rows, by) =>
    {
        var moved = rows.Select(r => r with { Span = new ReachSpan(r.Span!.Value.LowLogits + by, r.Span.Value.HighLogits + by) }).ToList();
        var (one, other) = (ReachChart.Of([new("1", 0)], rows, 90, Axis, "d"), ReachChart.Of([new("1", by)], moved, 90, Axis, "d"));
        foreach (var (a, b) in Bars(one).Zip(Bars(other))) Assert.Equal(a.XMm, b.XMm, 1e-6);
    });

    [Fact]
    public void Of_Pupils_KeepTheOrderTheyAreGivenIn()
    {
        var rows = new[] { "Zoe", "Ann", "Mia" }.Select((name, i) => new ReachRow(name, new ReachSpan(-i, 1 - i), 0, false, [])).ToList();
        var scene = ReachChart.Of([new("1", 0)], rows, 90, Axis, "d");
        Assert.Equal(["Zoe", "Ann", "Mia"], scene.Shapes.OfType<Text>().Where(t => t.Content.Length == 3).OrderBy(t => t.BaselineMm).Select(t => t.Content));
    }

    [Fact]
    public void Of_MostlyAssumed_IsHollowAndDashed()
    {
        var scene = ReachChart.Of([new("1", 0)], [new("Ann", new ReachSpan(-1, 1), .5, true, [])], 90, Axis, "d");
        Assert.DoesNotContain(scene.Shapes, s => s.Tone == Tone.AccentMiddle);
        Assert.Contains(scene.Shapes.OfType<Line>(), l => l.IsDashed);
        Assert.Contains(scene.Shapes.OfType<Box>(), b => b is { StrokeMm: > 0, Tone: Tone.Muted });
    }

    [Fact]
    public void Of_ABarredLevel_IsCrossedOutInThatRowOnly()
    {
        ReachRow Row(string name, params int[] barred) => new(name, new ReachSpan(-1, 1), 0, false, barred);
        var scene = ReachChart.Of([new("1", 0), new("2", .5)], [Row("Ann"), Row("Ben", 1)], 90, Axis, "d");
        var cross = scene.Shapes.OfType<Line>().Where(l => l.X1Mm != l.X2Mm && l.Y1Mm != l.Y2Mm).ToList();
        Assert.Equal(2, cross.Count);
        Assert.All(cross, l => Assert.Equal(Level(scene, 1).X1Mm, (l.X1Mm + l.X2Mm) / 2, 1e-9));
        Assert.All(cross, l => Assert.True((l.Y1Mm + l.Y2Mm) / 2 > Bars(scene)[0].YMm + 3));
    }

    [Fact]
    public void Of_NothingAllowed_SaysSoInWords()
    {
        var scene = ReachChart.Of([new("1", 0)], [new("Ann", null, 0, false, [0], "no level")], 90, Axis, "d");
        Assert.Contains(scene.Shapes.OfType<Text>(), t => t.Content == "no level");
        Assert.Empty(Bars(scene));
    }

    [Fact]
    public void Of_LevelsCloseTogether_TheirHeadsDoNotTouch()
    {
        var scene = ReachChart.Of([new("1", 0), new("2", .01), new("3", .02)], [new("Ann", new ReachSpan(-2, 2), 0, false, [])], 90, Axis, "d");
        var heads = scene.Shapes.OfType<Box>().Where(b => b.Tone == Tone.Ink).ToList();
        Assert.Equal(3, heads.Select(h => h.YMm).Distinct().Count());
        Assert.All(scene.Shapes.OfType<Box>(), b => Assert.InRange(b.YMm + b.HeightMm, 0, scene.HeightMm));
    }

    [Fact]
    public void Of_PlacesFarAway_StayInThePicture()
    {
        var scene = ReachChart.Of([new("1", 0)], [new("Ann", new ReachSpan(40, 42), 9, false, []), new("Ben", new ReachSpan(-42, -40), 9, true, [])], 90, Axis, "d");
        Assert.All(scene.Shapes.OfType<Box>(), b => Assert.True(b.XMm >= 0 && b.WidthMm > 0 && b.XMm + b.WidthMm <= 90));
        Assert.All(scene.Shapes.OfType<Line>(), l => Assert.True(l.X1Mm >= 0 && l.X2Mm <= 90));
    }

    [Fact]
    public void Of_WrongInput_Throws()
    {
        ReachRow Row(ReachSpan? span, double off, params int[] barred) => new("Ann", span, off, false, barred);
        Action<ReachRow> of = row => ReachChart.Of([new("1", 0)], [row], 90, Axis, "d");
        Assert.Throws<ArgumentOutOfRangeException>(() => of(Row(new ReachSpan(1, 0), 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => of(Row(new ReachSpan(double.NaN, 0), 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => of(Row(new ReachSpan(0, 1), -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => of(Row(new ReachSpan(0, 1), 0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachChart.Of([new("1", double.NaN)], [], 90, Axis, "d"));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachChart.Of([], [], 39, Axis, "d"));
    }

    // A level's line is the upright one in ink; a bar is a box with round ends.
    private static Line Level(Scene scene, int index) => scene.Shapes.OfType<Line>().Where(l => l.Tone == Tone.Ink && l.X1Mm == l.X2Mm).ElementAt(index);

    private static List<Box> Bars(Scene scene) => [.. scene.Shapes.OfType<Box>().Where(b => b.Tone == Tone.AccentMiddle || b is { Tone: Tone.Muted, StrokeMm: > 0 })];
}
