using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks;
using Slantwise.Surface.Tests.Marks.Photos;
using SkiaSharp;

namespace Slantwise.Bench.Accuracy;

/// <summary>Simulated photos beside each other: what the study's words for faults look like.</summary>
internal static class ContactSheet
{
    private const int CellPx = 420;

    public static void Write(string path, IReadOnlyList<Fault> faults, ulong seed)
    {
        var severities = Enum.GetValues<Severity>();
        using var surface = SKSurface.Create(new SKImageInfo(CellPx * severities.Length, CellPx * faults.Count));
        surface.Canvas.Clear(SKColors.White);
        for (var row = 0; row < faults.Count; row++)
            foreach (var severity in severities)
            {
                using var picture = BitmapOf(SimulatedPage.Of(seed + (ulong)row, faults[row], severity, severity == Severity.Beyond ? Severity.Hard : severity).Image);
                var scale = (CellPx - 8f) / Math.Max(picture.Width, picture.Height);
                var (width, height) = (picture.Width * scale, picture.Height * scale);
                var (left, top) = ((int)severity * CellPx + (CellPx - width) / 2, row * CellPx + (CellPx - height) / 2);
                using var image = SKImage.FromBitmap(picture);
                surface.Canvas.DrawImage(image, SKRect.Create(left, top, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
            }
        using var snapshot = surface.Snapshot();
        Save(path, snapshot.Encode(SKEncodedImageFormat.Png, 90));
    }

    public static void WriteOne(string path, GreyImage image)
    {
        using var bitmap = BitmapOf(image);
        Save(path, bitmap.Encode(SKEncodedImageFormat.Png, 90));
    }

    /// <summary>A field and 8 mm around it, eight pixels for one.</summary>
    public static void WriteField(string path, SimulatedPage page, string key)
    {
        var field = page.Placed.Fields[page.Form.Fields.ToList().FindIndex(f => f.Key == key)];
        var middle = page.View.PxOf(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
        var half = (int)(8 * page.View.PxPerMm);
        using var whole = BitmapOf(page.Image);
        using var image = SKImage.FromBitmap(whole);
        using var surface = SKSurface.Create(new SKImageInfo(16 * half, 16 * half));
        surface.Canvas.DrawImage(
            image, SKRect.Create((int)middle.XPx - half, (int)middle.YPx - half, 2 * half, 2 * half), SKRect.Create(16 * half, 16 * half), new SKSamplingOptions(SKFilterMode.Nearest));
        using var snapshot = surface.Snapshot();
        Save(path, snapshot.Encode(SKEncodedImageFormat.Png, 90));
    }

    private static void Save(string path, SKData data)
    {
        using (data) File.WriteAllBytes(path, data.ToArray());
    }

    private static SKBitmap BitmapOf(GreyImage image)
    {
        var bitmap = new SKBitmap(new SKImageInfo(image.WidthPx, image.HeightPx, SKColorType.Gray8, SKAlphaType.Opaque));
        for (var y = 0; y < image.HeightPx; y++) image.Values.AsSpan(y * image.WidthPx, image.WidthPx).CopyTo(bitmap.GetPixelSpan()[(y * bitmap.RowBytes)..]);
        return bitmap;
    }
}
