using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>The test form with every third field marked in one of four ways, and what is to be read on it.</summary>
internal static class FilledForm
{
    public static readonly SheetLayout Form = TestForm.A4;
    public static readonly HashSet<string> Marked = [.. Form.Fields.Where((_, i) => i % 3 == 0).Select(f => f.Key)];
    public static readonly PaperRaster Paper = Fresh();

    public static PaperRaster Fresh()
    {
        var paper = PaperRaster.Printed(Form);
        for (var i = 0; i < Form.Fields.Count; i += 3)
        {
            var field = Form.Fields[i];
            switch (i / 3 % 4)
            {
                case 0: Pencil.Tick(paper, field); break;
                case 1: Pencil.Cross(paper, field); break;
                case 2: Pencil.Fill(paper, field); break;
                default: Pencil.HalfFill(paper, field); break;
            }
        }
        return paper;
    }

    /// <summary>Every field read as it was filled, its middle mapped to .15 mm on average.</summary>
    public static void AssertRead(FormReading reading, TestPhoto photo)
    {
        Assert.Equal(PageFault.None, reading.Fault);
        Assert.Equal(Form.Fields.Select(f => f.Key), reading.Fields.Select(f => f.Key));
        var wrong = reading.Fields.Where(f => f.Verdict != (Marked.Contains(f.Key) ? MarkVerdict.Marked : MarkVerdict.Empty))
            .Select(f => $"{f.Key} {f.Verdict} {f.MarkedFraction:f3}").ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
        Assert.InRange(MeanOffMm(reading.Map!, photo), 0, .15);
    }

    private static double MeanOffMm(PageMap map, TestPhoto photo) => Form.Fields.Average(f =>
    {
        var (x, y) = (f.XMm + f.WidthMm / 2, f.YMm + f.HeightMm / 2);
        var (seen, there, aside) = (map.At(x, y), photo.TrueAt(x, y), photo.TrueAt(x + 1, y));
        return double.Hypot(seen.XPx - there.XPx, seen.YPx - there.YPx) / double.Hypot(aside.XPx - there.XPx, aside.YPx - there.YPx);
    });
}
