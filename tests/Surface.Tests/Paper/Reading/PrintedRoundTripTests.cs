using System.Globalization;
using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Paper;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Sheets;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Paper.Reading;

/// <summary>Whatever way a sheet is printed, what is marked on it is what is read: printed, drawn by poppler, marked, read.</summary>
public sealed class PrintedRoundTripTests
{
    private const int Dpi = 200;

    private static readonly SheetContent Content = new() { Title = "Balance", Tasks = [PaperLessons.OneFoot, PaperLessons.Rope], SetCount = 3, TrialCount = 5 };

    public static TheoryData<string> Ways => ["a4", "letter", "twoUp", "large", "wide", "signs", "cream", "spare", "observation", "adapted", "adapted twoUp", "adapted large"];

    private static PaperOptions OptionsOf(string way)
    {
        var options = new PaperOptions(way == "letter" ? PaperSize.Letter : PaperSize.A4, CultureInfo.GetCultureInfo(way == "wide" ? "es" : "en"));
        return way.Replace("adapted ", "") switch
        {
            "twoUp" => options with { IsTwoUp = true },
            "large" => options with { IsLargePrint = true },
            "wide" => options with { HasWideSpacing = true },
            "signs" => options with { HasSigns = true },
            "cream" => options with { IsCream = true },
            "spare" => options with { SpareCount = 1, FirstSpareNumber = 7 },
            _ => options,
        };
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public async Task Read_PrintedAndMarked_IsWhatWasMarked(string way)
    {
        var record = PaperLessons.Of(way == "spare" ? 0 : 2, Content);
        // The first of a page's pupils does both tasks in a way of their own, so that all their fields stand lower than the other's.
        if (way.StartsWith("adapted", StringComparison.Ordinal)) record = Content.Tasks.Aggregate(record, (r, task) => r.WithAdaptation(r.Pupils[0], task, "One hand on the wall, and the other one where you can see it, as long as you like"));
        var options = OptionsOf(way);
        var page = (way == "observation" ? ObservationPages.Of(record, options) : TaskSheetPages.Of(record, options))
            .First(p => p.Forms.Any(f => f.Layout.Fields.Count > 0));
        Assert.Equal(options.IsTwoUp ? 2 : 1, page.Forms.Count);
        using var folder = new TempFolder();
        await using (var pdf = File.Create(folder.At("page.pdf"))) PdfWriter.Write([page.Scene], "Page", options.Language, pdf);
        ScannedPrint.Of(folder.At("page.pdf"), folder.At("page"), Dpi, 1);

        var random = new Random(way.Length);
        using var picture = SKBitmap.Decode(folder.At("page-1.png"));
        var meant = page.Forms.ToDictionary(f => f.Code, f => Marked(picture, f, random));
        Assert.Contains(meant.Values, m => m.Count > 3);
        var layouts = page.Forms.DistinctBy(f => f.Code.LayoutTag).ToDictionary(f => f.Code.LayoutTag, f => f.Layout);
        var expected = new ExpectedForms(record.School.Id, (tag, _) => Task.FromResult(layouts.GetValueOrDefault(tag)));
        var forms = new List<ReadForm>();
        await foreach (var read in new PageReader(new ReadingLimits()).ReadAsync(ScanFile.Of("page.jpg", DrawnForm.Jpeg(picture, 92)), expected)) forms.AddRange(read.Forms);

        Assert.Equal(page.Forms.Select(f => f.Code).ToHashSet(), forms.Select(f => f.Code!).ToHashSet());
        // A page of long words may have nothing to mark.
        foreach (var form in forms.Where(f => f.Layout!.Fields.Count > 0))
        {
            Assert.Equal(PageFault.None, form.Reading.Fault);
            Assert.Empty(form.Reading.Fields.Where(f => f.Verdict == MarkVerdict.Doubtful).Select(f => f.Key));
            Assert.Equal(meant[form.Code!], form.Reading.Fields.Where(f => f.Verdict == MarkVerdict.Marked).Select(f => f.Key).ToHashSet());
        }
    }

    // A third of all fields, ticks and crosses.
    private static HashSet<string> Marked(SKBitmap picture, PrintedForm form, Random random)
    {
        var marked = new HashSet<string>();
        using var canvas = new SKCanvas(picture);
        canvas.Scale((float)(Dpi / 25.4));
        canvas.Translate((float)form.LeftMm, (float)form.TopMm);
        canvas.Scale((float)form.ScaleFraction);
        using var pen = new SKPaint { Color = new SKColor(60, 60, 65), StrokeWidth = 0.6f, IsStroke = true, IsAntialias = true, StrokeCap = SKStrokeCap.Round };
        foreach (var field in form.Layout.Fields.Where(_ => random.Next(3) == 0))
        {
            var (x, y, w, h) = ((float)field.XMm, (float)field.YMm, (float)field.WidthMm, (float)field.HeightMm);
            var isTick = random.Next(2) == 0;
            canvas.DrawLine(x + 0.2f * w, y + (isTick ? 0.5f : 0.2f) * h, x + (isTick ? 0.45f : 0.8f) * w, y + 0.8f * h, pen);
            canvas.DrawLine(x + (isTick ? 0.45f : 0.2f) * w, y + 0.8f * h, x + 0.82f * w, y + 0.18f * h, pen);
            marked.Add(field.Key);
        }
        return marked;
    }
}
