using System.Globalization;
using CsCheck;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Figures;

namespace Slantwise.Engines.Tests.Drawing.Figures;

public sealed class FigureDrawingTests
{
    private static readonly Gen<Round> AnyBall = Gen.Select(Gen.Double[10, 90], Gen.Double[10, 90], Gen.Double[1, 9], Gen.Double[-20, 20], (x, y, r, d) => new Round(x, y, r, d));

    // The rules, by hand: paper-white skin, then tones that a printer makes clearly darker greys of. L* from 0 (black) to 100 (paper).
    [Fact]
    public void Tones_InGrey_AreStepsApart()
    {
        Tone[] lightToDark = [Tone.Ground, Tone.AccentSoft, Tone.AccentMiddle, Tone.Muted, Tone.Ink];
        int[] leastSteps = [5, 12, 35, 20];
        for (var i = 0; i < leastSteps.Length; i++)
            Assert.True(Lightness(lightToDark[i]) - Lightness(lightToDark[i + 1]) >= leastSteps[i], $"{lightToDark[i]} and {lightToDark[i + 1]}");
        // The partner's shirt and shorts are the other way round.
        Assert.True(Lightness(Tone.SecondMiddle) - Lightness(Tone.Muted) >= 40);
    }

    [Theory]
    [InlineData(20, .25)]
    [InlineData(25, .25)]
    [InlineData(80, .55)]
    public void Of_Stature_OutlinePrints(double statureMm, double leastMm)
    {
        var edges = Draw([Limb(30, 10, true), Limb(60, 10, false)], statureMm).Shapes.OfType<Outline>().Where(o => o.Inside is not null).ToArray();
        Assert.NotEmpty(edges);
        // Half of the stroke is under the fill.
        Assert.All(edges, edge => Assert.True(edge.StrokeMm / 2 >= leastMm));
    }

    [Fact]
    public void Of_AnyLimb_CoversItsBallsAndNothingFarFromThem() => Gen.Select(AnyBall, AnyBall, AnyBall).Sample((a, b, c) =>
    {
        var limb = new FigureLimb([a, b], [b, c], [[c, c with { XMm = c.XMm + 3 }]], IsArm: true, .5);
        var runs = Runs(Draw([limb], 50));
        Assert.All([a, b, c], ball => Assert.All(Enumerable.Range(0, 12), i =>
        {
            var (sine, cosine) = Math.SinCos(i * Math.PI / 6);
            Assert.True(Covers(runs, ball.XMm + .9 * ball.RadiusMm * cosine, ball.YMm + .9 * ball.RadiusMm * sine));
        }));
        foreach (var (x, y) in from x in Enumerable.Range(0, 26) from y in Enumerable.Range(0, 26) select (x * 4.0, y * 4.0))
        {
            // A plain second version of a tapered limb: the nearest of many balls between its ends.
            var awayMm = Enumerable.Range(0, 201).SelectMany(i => new[] { a.Towards(b, i / 200.0), b.Towards(c, i / 200.0), c with { XMm = c.XMm + 3 * i / 200.0 } })
                .Min(r => Math.Sqrt((x - r.XMm) * (x - r.XMm) + (y - r.YMm) * (y - r.YMm)) - r.RadiusMm);
            if (Math.Abs(awayMm) > .3) Assert.Equal(awayMm < 0, Covers(runs, x, y));
        }
    }, iter: 200);

    [Fact]
    public void Of_LimbExactlyBehindAnother_IsDrawnOnce()
    {
        var (near, far) = (Limb(30, 10, true), Limb(30, -10, true));
        Assert.Equal(Edges(Draw([near], 50)), Edges(Draw([near, far], 50)));
        Assert.Equal(Edges(Draw([near], 50)) + 1, Edges(Draw([near, Limb(32, -10, true)], 50)));
    }

    [Fact]
    public void Of_NearAndFarLimb_NearIsPaintedLastOverAGap()
    {
        var shapes = Draw([Limb(30, 10, true), Limb(33, -10, true)], 50).Shapes.OfType<Outline>().ToList();
        var (quiet, loud) = (shapes.FindIndex(o => o.Inside == Tone.AccentSoft), shapes.FindLastIndex(o => o is { Inside: Tone.Ground, Tone: Tone.Ink }));
        Assert.True(quiet >= 0 && loud > quiet);
        Assert.True(shapes[loud - 1] is { Tone: Tone.Ground, Inside: null });
    }

    private static Scene Draw(IReadOnlyList<FigureLimb> limbs, double statureMm)
    {
        // Trunk and head out of the way of what is tested.
        Round[] Slice(double yMm) => [new(150, yMm, 5, 0), new(155, yMm, 5, 0)];
        var head = new FigureHead(new(150, 100, 5, 0), new(0, 0, 5), new(5, 0, 0), new(0, -5, 0), [new(150, 110, 3, 0), new(150, 105, 3, 0)]);
        var body = new FigureBody([Slice(150), Slice(145), Slice(140)], [Slice(138), Slice(130), Slice(120), Slice(115)], head, limbs, 0);
        return FigureDrawing.Of([body], new FigureStage(), statureMm, 200, 200, "");
    }

    private static FigureLimb Limb(double xMm, double depthMm, bool isArm) => new(
        [new(xMm, 20, 4, depthMm), new(xMm, 40, 3, depthMm)], [new(xMm, 40, 3, depthMm), new(xMm, 60, 2, depthMm)],
        [[new(xMm, 60, 2, depthMm), new(xMm, 66, 2, depthMm)]], isArm, .5);

    private static int Edges(Scene scene) => scene.Shapes.OfType<Outline>().Count(o => o.Inside is not null);

    private static double Lightness(Tone tone)
    {
        var hex = PrintColours.HexOf(tone);
        double Channel(int at)
        {
            var c = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }
        return 116 * Math.Cbrt(0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5)) - 16;
    }

    private static List<List<(double X, double Y)>> Runs(Scene scene)
    {
        var runs = new List<List<(double X, double Y)>>();
        foreach (var step in scene.Shapes.OfType<Outline>().Where(o => o.Inside is not null).SelectMany(o => o.Steps))
        {
            if (step.Kind == OutlineStepKind.Move) runs.Add([]);
            if (step.Kind is OutlineStepKind.Move or OutlineStepKind.Line) runs[^1].Add((step.XMm, step.YMm));
            if (step.Kind != OutlineStepKind.Curve) continue;
            var (x, y) = runs[^1][^1];
            for (var i = 1; i <= 12; i++)
            {
                var (t, u) = (i / 12.0, 1 - i / 12.0);
                runs[^1].Add((
                    u * u * u * x + 3 * u * u * t * step.C1XMm + 3 * u * t * t * step.C2XMm + t * t * t * step.XMm,
                    u * u * u * y + 3 * u * u * t * step.C1YMm + 3 * u * t * t * step.C2YMm + t * t * t * step.YMm));
            }
        }
        return runs;
    }

    // Runs that turn one way may be looked at one by one.
    private static bool Covers(List<List<(double X, double Y)>> runs, double x, double y) => runs.Any(run =>
    {
        var isInside = false;
        for (var (i, j) = (0, run.Count - 1); i < run.Count; j = i++)
            if (run[i].Y > y != run[j].Y > y && x < (run[j].X - run[i].X) * (y - run[i].Y) / (run[j].Y - run[i].Y) + run[i].X) isInside = !isInside;
        return isInside;
    });
}
