using CsCheck;
using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>Each pass over pixels against the plainest way to the same.</summary>
public sealed class GreyPassesTests
{
    private static readonly Gen<GreyImage> Pictures = Gen.Select(Gen.Int[1, 90], Gen.Int[1, 40], Gen.Int[0, 1_000_000], (w, h, seed) =>
    {
        var values = new byte[w * h];
        new Random(seed).NextBytes(values);
        return new GreyImage(w, h, values);
    });

    [Fact]
    public void Half_OfAnyPicture_IsTheMeanOfFours() => Pictures.Sample(image =>
    {
        if (image.WidthPx < 2 || image.HeightPx < 2) return;
        var half = PictureLevels.Half(image);
        for (var y = 0; y < half.HeightPx; y++)
            for (var x = 0; x < half.WidthPx; x++)
                Assert.Equal((Grey(image, 2 * x, 2 * y) + Grey(image, 2 * x + 1, 2 * y) + Grey(image, 2 * x, 2 * y + 1) + Grey(image, 2 * x + 1, 2 * y + 1) + 2) / 4,
                    half.Values[y * half.WidthPx + x]);
    }, iter: 100);

    [Fact]
    public void LightestDarkest_OfAnyPicture_AreThoseWithinReach() => Gen.Select(Pictures, Gen.Int[0, 9]).Sample((image, reach) =>
    {
        var (w, h) = (image.WidthPx, image.HeightPx);
        var light = SlidingGreys.Lightest(image.Values, w, h, reach);
        var dark = SlidingGreys.Darkest(image.Values, w, h, reach);
        for (var y = 0; y < h; y++)
        {
            for (var x = 0; x < w; x++)
            {
                var near = Near(image, x, y, reach).ToList();
                Assert.Equal((near.Max(), near.Min()), (light[y * w + x], dark[y * w + x]));
            }
        }
    }, iter: 60);

    [Fact]
    public void LocalThreshold_OfAnyPicture_ComparesWithTheMeanAround() => Gen.Select(Pictures, Gen.Int[1, 12]).Sample((image, reach) =>
    {
        var mask = LocalThreshold.Of(image, reach, .75);
        for (var i = 0; i < mask.Length; i++)
        {
            var (mean, grey) = (Near(image, i % image.WidthPx, i / image.WidthPx, reach).Average(v => (double)v), image.Values[i]);
            if (Math.Abs(grey - .75 * mean) < 1e-3 || Math.Abs(mean - grey - 14) < 1e-3) continue;
            Assert.Equal(grey < .75 * mean && mean - grey > 14, mask[i] == 1);
        }
    }, iter: 60);

    [Fact]
    public void Blobs_OfAnyMask_AreThoseOfAFlood() => Gen.Select(Pictures, Gen.Int[60, 200]).Sample((image, limit) =>
    {
        var mask = image.Values.Select(v => (byte)(v > limit ? 1 : 0)).ToArray();
        var found = Blobs.Of(mask, image.WidthPx, image.HeightPx, 1).Select(b => (b.Count, Math.Round(b.X, 9), Math.Round(b.Y, 9), Math.Round(b.SpreadXx + b.SpreadXy + b.SpreadYy, 6)));
        var flooded = Flooded((byte[])mask.Clone(), image.WidthPx, image.HeightPx);
        Assert.Equal(flooded.Order(), found.Order());
    }, iter: 150);

    [Fact]
    public void Below_OfManyValues_IsTheirQuantile()
    {
        var random = new Random(5);
        var values = Enumerable.Range(0, 4000).Select(_ => (float)(random.NextDouble() * random.NextDouble())).ToArray();
        var shares = new Shares(new int[Shares.StepCount]);
        foreach (var v in values) shares.Add(v);
        Array.Sort(values);
        foreach (var share in (double[])[.03, .3, .5, .7, .97]) Assert.Equal(values[(int)(share * 4000)], shares.Below(share), .004);
    }

    private static byte Grey(GreyImage image, int x, int y) => image.Values[y * image.WidthPx + x];

    private static IEnumerable<byte> Near(GreyImage image, int x, int y, int reach)
    {
        for (var j = Math.Max(0, y - reach); j <= Math.Min(image.HeightPx - 1, y + reach); j++)
            for (var i = Math.Max(0, x - reach); i <= Math.Min(image.WidthPx - 1, x + reach); i++)
                yield return Grey(image, i, j);
    }

    private static List<(double, double, double, double)> Flooded(byte[] mask, int width, int height)
    {
        var all = new List<(double, double, double, double)>();
        for (var first = 0; first < mask.Length; first++)
        {
            if (mask[first] == 0) continue;
            var (stack, pixels) = (new Stack<int>([first]), new List<(double X, double Y)>());
            mask[first] = 0;
            while (stack.TryPop(out var at))
            {
                pixels.Add((at % width + .5, at / width + .5));
                for (var y = Math.Max(0, at / width - 1); y <= Math.Min(height - 1, at / width + 1); y++)
                {
                    for (var x = Math.Max(0, at % width - 1); x <= Math.Min(width - 1, at % width + 1); x++)
                    {
                        if (mask[y * width + x] == 0) continue;
                        mask[y * width + x] = 0;
                        stack.Push(y * width + x);
                    }
                }
            }
            var (mx, my) = (pixels.Average(p => p.X), pixels.Average(p => p.Y));
            var spread = pixels.Average(p => (p.X - mx) * (p.X - mx) + (p.X - mx) * (p.Y - my) + (p.Y - my) * (p.Y - my)) + 2.0 / 12;
            all.Add((pixels.Count, Math.Round(mx, 9), Math.Round(my, 9), Math.Round(spread, 6)));
        }
        return all;
    }
}
