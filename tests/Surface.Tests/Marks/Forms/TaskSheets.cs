using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Slantwise.Paper;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>Our own task sheets as a printer would print them: their PDF, rastered by poppler.</summary>
internal sealed class TaskSheets : IDisposable
{
    private const int CodeModuleCount = 25;

    // Of 255: paper is not as white as a screen.
    private const int PaperTone = 240;

    private readonly string _folder = Directory.CreateTempSubdirectory("slantwise-sheets-").FullName;
    private readonly ConcurrentDictionary<(int Page, double PxPerMm), Lazy<Leaf>> _leaves = new();
    private readonly IReadOnlyList<PrintedPage> _pages;

    public TaskSheets()
    {
        var english = new PaperOptions(PaperSize.A4, CultureInfo.GetCultureInfo("en"));
        _pages =
        [
            .. TaskSheetPages.Of(PaperLessons.Of(1, PaperLessons.OneFoot, PaperLessons.Throw), english),
            .. TaskSheetPages.Of(PaperLessons.Of(1, PaperLessons.Tripod, PaperLessons.Rope), english with { Language = CultureInfo.GetCultureInfo("es") }),
            .. TaskSheetPages.Of(PaperLessons.Of(1, PaperLessons.Rope), english with { Size = PaperSize.Letter }),
        ];
        for (var page = 0; page < _pages.Count; page++)
        {
            using var file = File.Create(PdfOf(page));
            PdfWriter.Write([_pages[page].Scene], "Sheet", CultureInfo.InvariantCulture, file);
        }
        All = [.. _pages.SelectMany((page, index) => page.Forms.Where(f => f.Layout.Fields.Count > 0).Select(form => new PrintedSheet(
            form.Layout, PrintedSheet.PlacedAt(form.Layout, form.LeftMm, form.TopMm, form.ScaleFraction), page.Scene.WidthMm, page.Scene.HeightMm, CodeModuleCount,
            pxPerMm => _leaves.GetOrAdd((index, pxPerMm), _ => new(() => Rastered(index, pxPerMm))).Value.Copy())))];
    }

    /// <summary>Whether poppler is on this machine.</summary>
    public static bool CanPrint => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries).Any(folder => File.Exists(Path.Combine(folder, "pdftoppm")));

    public IReadOnlyList<PrintedSheet> All { get; }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string PdfOf(int page) => Path.Combine(_folder, $"{page}.pdf");

    private Leaf Rastered(int page, double pxPerMm)
    {
        var target = Path.Combine(_folder, FormattableString.Invariant($"{page}-{pxPerMm}"));
        using (var process = Process.Start("pdftoppm", ["-gray", "-singlefile", "-r", (pxPerMm * 25.4).ToString(CultureInfo.InvariantCulture), PdfOf(page), target])) process.WaitForExit();
        var leaf = new Leaf(_pages[page].Scene.WidthMm, _pages[page].Scene.HeightMm, pxPerMm, PaperTone);
        var (values, width, height) = Grey(File.ReadAllBytes(target + ".pgm"));
        for (var y = 0; y < Math.Min(height, leaf.HeightPx); y++)
            for (var x = 0; x < Math.Min(width, leaf.WidthPx); x++) leaf.Values[y * leaf.WidthPx + x] = (byte)(values[y * width + x] * PaperTone / 255);
        return leaf;
    }

    // A binary grey map: "P5", width, height, deepest value, one white space, then a byte a pixel.
    private static (byte[] Values, int Width, int Height) Grey(byte[] file)
    {
        var (at, numbers) = (2, new List<int>());
        while (numbers.Count < 3)
        {
            while (char.IsWhiteSpace((char)file[at])) at++;
            var start = at;
            while (char.IsDigit((char)file[at])) at++;
            numbers.Add(int.Parse(file.AsSpan(start, at - start), CultureInfo.InvariantCulture));
        }
        return (file[(at + 1)..], numbers[0], numbers[1]);
    }
}
