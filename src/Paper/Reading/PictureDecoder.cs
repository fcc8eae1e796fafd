using System.Globalization;
using System.Runtime.InteropServices;
using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Paper.Reading;

/// <summary>From the bytes of a JPEG or PNG to an upright picture in grey, no larger than is asked for.</summary>
internal static class PictureDecoder
{
    /// <summary>The picture, or why there is none.</summary>
    /// <param name="bytes">Any bytes.</param>
    /// <param name="sidePx">The longer side wanted at least, where there is as much: the picture is halved while it stays above.</param>
    /// <param name="limits">What it may cost.</param>
    public static DecodedPicture Decode(ReadOnlyMemory<byte> bytes, int sidePx, ReadingLimits limits)
    {
        if (bytes.Length == 0) return Problem(ScanRemarkKind.FileEmpty);
        using var data = DataOf(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null) return Problem(IsKnownKind(bytes.Span) ? ScanRemarkKind.FileDamaged : ScanRemarkKind.FileKind);
        if (codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png)) return Problem(ScanRemarkKind.FileKind);
        var (width, height) = (codec.Info.Width, codec.Info.Height);
        if ((long)width * height > limits.MaxPixelCount)
            return Problem(ScanRemarkKind.PictureTooLarge, Text(width), Text(height), Text(limits.MaxPixelCount / 1_000_000));
        if (Math.Max(width, height) < limits.MinSidePx) return Problem(ScanRemarkKind.PictureTooSmall, Text(width), Text(height));
        if (codec.EncodedFormat == SKEncodedImageFormat.Jpeg && ScanCount(bytes.Span) > limits.MaxScanCount) return Problem(ScanRemarkKind.FileDamaged);

        // A JPEG unpacks to a half, a quarter or an eighth at a fraction of the cost; to sizes between at more than the whole.
        var scale = 1f;
        while (Math.Max(width, height) * scale / 2 >= sidePx && scale > 0.125f) scale /= 2;
        var size = codec.GetScaledDimensions(scale);
        var info = new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, codec.Info.IsOpaque ? SKAlphaType.Opaque : SKAlphaType.Unpremul);
        using var pixels = new SKBitmap();
        if (!pixels.TryAllocPixels(info)) return Problem(ScanRemarkKind.PictureTooLarge, Text(width), Text(height), Text(limits.MaxPixelCount / 1_000_000));
        if (codec.GetPixels(info, pixels.GetPixels()) != SKCodecResult.Success) return Problem(ScanRemarkKind.FileDamaged);

        var grey = GreyPixels.Of(pixels.GetPixelSpan(), size.Width, size.Height, codec.EncodedOrigin);
        grey = GreyPixels.Halved(grey, sidePx);
        return new DecodedPicture(grey, Math.Max(grey.WidthPx, grey.HeightPx) >= Math.Max(width, height), null);
    }

    private static SKData DataOf(ReadOnlyMemory<byte> bytes) => MemoryMarshal.TryGetArray(bytes, out var part) && part.Offset == 0 && part.Count == part.Array!.Length
        ? SKData.CreateCopy(part.Array)
        : SKData.CreateCopy(bytes.Span);

    private static bool IsKnownKind(ReadOnlySpan<byte> bytes) => bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]) || bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']);

    // A start of scan is FF DA; within packed data an FF is followed by 00, so nothing else looks like it but an embedded preview.
    private static int ScanCount(ReadOnlySpan<byte> bytes)
    {
        var count = 0;
        ReadOnlySpan<byte> marker = [0xFF, 0xDA];
        for (var at = bytes.IndexOf(marker); at >= 0; at = bytes.IndexOf(marker))
        {
            count++;
            bytes = bytes[(at + 2)..];
        }
        return count;
    }

    private static DecodedPicture Problem(ScanRemarkKind kind, params string[] details) => new(null, true, new ScanRemark(kind, details));

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
