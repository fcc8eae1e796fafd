using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class FormReaderTests
{
    private static readonly SheetLayout Form = TestForm.A4;
    private static readonly PaperRaster Filled = FilledForm(out _);

    [Theory]
    [InlineData(3.6, 0, 0)]
    [InlineData(6, 0, 0)]
    [InlineData(6, 3, .1)]
    [InlineData(8, 90, .12)]
    [InlineData(5, 200, .08)]
    public void Read_CleanForm_MarksExactly(double pxPerMm, double turnDeg, double slant)
    {
        var photo = TestPhoto.Of(pxPerMm, turnDeg, slant: slant) with { NoiseGrey = 3 };
        var image = photo.Taken(Filled);
        foreach (var code in (CodeSighting?[])[photo.Code(Form.Code), null])
        {
            var reading = FormReader.Read(image, Form, code);
            TestContext.Current.SendDiagnosticMessage($"{pxPerMm} {turnDeg} {slant} {code is null}: {reading.Fault} {MeanOffMm(reading.Map, photo):f3}");
            Assert.Equal(PageFault.None, reading.Fault);
            Assert.True(MeanOffMm(reading.Map, photo) < .15);
            AssertMarks(reading);
        }
    }

    private static void AssertMarks(FormReading reading)
    {
        FilledForm(out var marked);
        var wrong = reading.Fields.Where(f => f.Verdict != (marked.Contains(f.Key) ? MarkVerdict.Marked : MarkVerdict.Empty))
            .Select(f => $"{f.Key} {f.Verdict} {f.MarkedFraction:f3}").ToList();
        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    private static double MeanOffMm(PageMap? map, TestPhoto photo) => map is null ? double.NaN : Form.Fields.Average(f =>
    {
        var (x, y) = (f.XMm + f.WidthMm / 2, f.YMm + f.HeightMm / 2);
        var (seen, there, aside) = (map.At(x, y), photo.TrueAt(x, y), photo.TrueAt(x + 1, y));
        return double.Hypot(seen.XPx - there.XPx, seen.YPx - there.YPx) / double.Hypot(aside.XPx - there.XPx, aside.YPx - there.YPx);
    });

    private static PaperRaster FilledForm(out HashSet<string> marked)
    {
        var paper = PaperRaster.Printed(Form);
        marked = [];
        for (var i = 0; i < Form.Fields.Count; i += 3)
        {
            var field = Form.Fields[i];
            marked.Add(field.Key);
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
}
