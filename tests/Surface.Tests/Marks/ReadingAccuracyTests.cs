using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;
using Slantwise.Surface.Tests.Marks.Hands;
using Slantwise.Surface.Tests.Marks.Measures;
using Slantwise.Surface.Tests.Marks.Photos.Faults;

namespace Slantwise.Surface.Tests.Marks;

/// <summary>A small round of what <c>bench/Marks/Accuracy</c> does at length.</summary>
public class ReadingAccuracyTests
{
    // Seeds of their own: neither those the model was fitted on nor those of the long study.
    private const ulong FirstSeed = 700_001;

    // Issue 5: no silent wrong mark, at most 1 in 100 to a person, on fair photos of every fault.
    [Fact]
    public void Read_FairPhotosOfEveryFault_AreNeverSilentlyWrong()
    {
        var study = new Study();
        for (var i = 0; i < AllFaults.InOrder.Count; i++) study.Read(FirstSeed + (ulong)i, AllFaults.InOrder[i], Severity.Fair, Severity.Fair);
        Assert.True(study.SilentWrong.Count == 0, string.Join('\n', study.SilentWrong));
        Assert.Equal(0, study.All.RefusedPages);
        Assert.True(study.All.Fields > 4000 && study.All.Marked > 1000, $"{study.All.Fields} fields, {study.All.Marked} marked: too few to tell.");
        Assert.True(study.All.DoubtfulFraction <= .01, string.Join('\n', study.DoubtfulOnes));
    }

    // The same for what we print ourselves: the PDF's own raster, filled in and photographed.
    [Fact]
    public void Read_OurOwnTaskSheets_AreNeverSilentlyWrong()
    {
        Assert.SkipUnless(TaskSheets.CanPrint, "pdftoppm is not on this machine (Debian: poppler-utils).");
        using var sheets = new TaskSheets();
        var study = new Study();
        Assert.True(sheets.All.Count >= 4, $"{sheets.All.Count} printed forms have fields.");
        for (var i = 0; i < sheets.All.Count; i++) study.Read(FirstSeed + (ulong)i, new Nothing(), Severity.Fair, Severity.Fair, sheets.All[i]);
        Assert.True(study.SilentWrong.Count == 0, string.Join('\n', study.SilentWrong));
        Assert.Equal(0, study.All.RefusedPages);
        Assert.True(study.All.Marked > 40, $"{study.All.Marked} marked: too few to tell.");
    }

    // A flat sheet in good light, filled without a slip: every tick, cross and filling is read, and nothing else.
    [Fact]
    public void Read_NothingTheMatter_IsExact()
    {
        for (ulong seed = 1; seed <= 4; seed++)
        {
            var page = SimulatedPage.Of(seed, new Nothing(), Severity.Fair);
            var reading = page.Read();
            Assert.Equal(PageFault.None, reading.Fault);
            for (var i = 0; i < page.Truths.Count; i++)
            {
                var truth = page.Truths[i];
                if (truth.Trouble != Trouble.None || truth.Style is MarkStyle.Bridge or MarkStyle.Ring or MarkStyle.Dot) continue;
                Assert.True(reading.Fields[i].Verdict == (truth.IsMarked ? MarkVerdict.Marked : MarkVerdict.Empty), $"seed {seed}: {reading.Fields[i]} for {truth}");
            }
        }
    }

    // The reader's map against the camera's: a third of a millimetre anywhere on the form, and half of one where paper is bent.
    [Theory]
    [InlineData("none", .3)]
    [InlineData("perspective", .3)]
    [InlineData("lens distortion", .3)]
    [InlineData("curl", .5)]
    [InlineData("fold", .5)]
    public void Map_FairPhoto_LiesWhereTheCameraSawTheForm(string name, double withinMm)
    {
        var page = SimulatedPage.Of(FirstSeed, AllFaults.InOrder.First(f => f.Name == name), Severity.Fair);
        var map = page.Read().Map;
        Assert.NotNull(map);
        foreach (var (field, placed) in page.Form.Fields.Zip(page.Placed.Fields))
        {
            var (seen, truly) = (map.At(field.XMm, field.YMm), page.View.PxOf(placed.XMm, placed.YMm));
            var offMm = Math.Sqrt(Math.Pow(seen.XPx - truly.XPx, 2) + Math.Pow(seen.YPx - truly.YPx, 2)) / page.View.PxPerMm;
            Assert.True(offMm < withinMm, $"{field.Key} is {offMm:0.00} mm off.");
        }
    }

    // What no one could read is refused whole or asked about: of fields that are read all the same, fewer than 1 in 200 wrongly.
    [Fact]
    public void Read_PhotosBeyondReading_AreRefusedOrAskedAbout()
    {
        var study = new Study();
        foreach (var name in new[] { "defocus", "motion blur", "low resolution", "sheet small in the picture", "cut off" })
            study.Read(FirstSeed, AllFaults.InOrder.First(f => f.Name == name), Severity.Beyond, Severity.Fair);
        Assert.True(study.All.SilentWrong * 200 <= study.All.Fields, string.Join('\n', study.SilentWrong));
    }
}
