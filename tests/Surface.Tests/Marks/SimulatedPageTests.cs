using CsCheck;
using Slantwise.Surface.Tests.Marks.Hands;
using Slantwise.Surface.Tests.Marks.Photos;
using Slantwise.Surface.Tests.Marks.Photos.Faults;

namespace Slantwise.Surface.Tests.Marks;

public class SimulatedPageTests
{
    public static TheoryData<string> Faults => [.. AllFaults.InOrder.Select(f => f.Name)];

    // Every place of the sheet is found again from its pixel, however the sheet bends and the camera leans.
    [Theory]
    [MemberData(nameof(Faults))]
    public void View_AnyFault_LeadsBackToThePlaceOnPaper(string name)
    {
        foreach (var severity in Enum.GetValues<Severity>())
        {
            var view = SimulatedPage.ViewOf(7, Named(name), severity);
            for (var x = 5.0; x < 140; x += 15)
                for (var y = 5.0; y < 200; y += 15)
                {
                    var pixel = view.PxOf(x, y);
                    var back = view.MmOf(pixel.XPx, pixel.YPx);
                    Assert.Equal(x, back.XMm, .05);
                    Assert.Equal(y, back.YMm, .05);
                }
        }
    }

    [Fact]
    public void Of_TheSameSeed_GivesTheSameBytes()
    {
        foreach (var name in new[] { "curl", "black and white scan" })
        {
            var (first, second) = (SimulatedPage.Of(12, Named(name), Severity.Hard), SimulatedPage.Of(12, Named(name), Severity.Hard));
            Assert.Equal(first.Image.Values, second.Image.Values);
            Assert.NotEqual(first.Image.Values, SimulatedPage.Of(13, Named(name), Severity.Hard).Image.Values);
        }
    }

    // Another photo of the same sheet shows the same marks.
    [Fact]
    public void Of_AnotherPhotoOrFault_LeavesTheTruth() => Gen.ULong[0, 1_000_000].Sample(seed =>
    {
        var first = SimulatedPage.Of(seed, Named("none"), Severity.Fair);
        var second = SimulatedPage.Of(seed, Named("curl"), Severity.Hard, photoSeed: 5);
        Assert.Equal(first.Truths, second.Truths);
        Assert.Equal(first.Form.Fields, second.Form.Fields);
        Assert.NotEqual(first.Image.Values, second.Image.Values);
    }, iter: 3, threads: 1);

    // Filled fields are dark in the picture where the view says they are, and fields that nothing befell are paper.
    [Fact]
    public void Of_NothingTheMatter_ShowsMarksWhereTheTruthIs()
    {
        var (filled, bare) = (0, 0);
        for (ulong seed = 1; seed <= 6; seed++)
        {
            var page = SimulatedPage.Of(seed, Named("none"), Severity.Fair);
            for (var i = 0; i < page.Truths.Count; i++)
            {
                var field = page.Placed.Fields[i];
                var paper = GreyAt(page, field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm + 1.6);
                var inside = GreyAt(page, field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
                if (page.Truths[i] is { Style: MarkStyle.Disc, Trouble: Trouble.None })
                {
                    filled++;
                    Assert.True(inside < .85 * paper, $"seed {seed}, {field.Key}: filled, but {inside:0} beside paper of {paper:0}.");
                }
                else if (page.Truths[i] == new FieldTruth(MarkStyle.None, Trouble.None))
                {
                    bare++;
                    Assert.True(inside > 120, $"seed {seed}, {field.Key}: empty, but {inside:0}.");
                }
            }
        }
        Assert.True(filled > 20 && bare > 300, $"{filled} filled and {bare} bare fields are too few to tell.");
    }

    // The mean over a millimetre around a place.
    private static double GreyAt(SimulatedPage page, double xMm, double yMm)
    {
        var sum = 0.0;
        for (var i = 0; i < 25; i++)
        {
            var p = page.View.PxOf(xMm + (i % 5 - 2) * .2, yMm + (i / 5 - 2) * .2);
            sum += page.Image.Values[(int)p.YPx * page.Image.WidthPx + (int)p.XPx];
        }
        return sum / 25;
    }

    private static Fault Named(string name) => AllFaults.InOrder.First(f => f.Name == name);
}
