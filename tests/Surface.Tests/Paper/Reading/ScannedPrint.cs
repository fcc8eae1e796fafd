using SkiaSharp;

namespace Slantwise.Surface.Tests.Paper.Reading;

/// <summary>Pages of a PDF as a scanner sees them after a printer: drawn four times as fine and averaged. Drawn at once, a renderer makes lines whole pixels wide, which no paper does.</summary>
internal static class ScannedPrint
{
    private const int FinerCount = 4;

    /// <summary>Writes the first pages as PNG files: page-1.png, or page-01.png where there are more than nine.</summary>
    public static void Of(string pdf, string prefix, int dpi, int pageCount)
    {
        Tool.Run("pdftoppm", "-r", $"{dpi * FinerCount}", "-l", $"{pageCount}", "-png", pdf, prefix);
        foreach (var file in Directory.EnumerateFiles(Path.GetDirectoryName(prefix)!, Path.GetFileName(prefix) + "*.png").ToList())
        {
            using var fine = SKBitmap.Decode(file);
            using var seen = fine.Resize(fine.Info.WithSize(fine.Width / FinerCount, fine.Height / FinerCount), new SKSamplingOptions(SKFilterMode.Nearest, SKMipmapMode.Nearest));
            using var data = seen.Encode(SKEncodedImageFormat.Png, 100);
            File.WriteAllBytes(file, data.ToArray());
        }
    }
}
