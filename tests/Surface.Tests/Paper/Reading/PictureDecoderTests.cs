using SkiaSharp;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Surface.Tests.Paper.Reading;

public sealed class PictureDecoderTests
{
    private static readonly ReadingLimits Limits = new() { MinSidePx = 10 };

    // The eight ways a camera can be held, by what the numbers mean in the Exif standard: where row 0 and column 0 of the stored picture are in the scene.
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(2, 1, 0)]
    [InlineData(3, 1, 1)]
    [InlineData(4, 0, 1)]
    [InlineData(5, 0, 0)]
    [InlineData(6, 1, 0)]
    [InlineData(7, 1, 1)]
    [InlineData(8, 0, 1)]
    public void Decode_EachOrientation_PutsTheStoredCornerWhereItBelongs(int orientation, int atRight, int atBottom)
    {
        // 40 wide and 20 high, black in the stored top left corner.
        using var stored = new SKBitmap(40, 20);
        using (var canvas = new SKCanvas(stored))
        {
            canvas.Clear(SKColors.White);
            canvas.DrawRect(0, 0, 8, 8, new SKPaint { Color = SKColors.Black });
        }
        var grey = PictureDecoder.Decode(DrawnForm.WithOrientation(DrawnForm.Jpeg(stored, 95), orientation), 4000, Limits).Grey!;
        Assert.Equal(orientation >= 5 ? (20, 40) : (40, 20), (grey.WidthPx, grey.HeightPx));
        for (var x = 0; x <= 1; x++)
        {
            for (var y = 0; y <= 1; y++)
            {
                var value = grey.Values[(y == 0 ? 3 : grey.HeightPx - 4) * grey.WidthPx + (x == 0 ? 3 : grey.WidthPx - 4)];
                Assert.True((x, y) == (atRight, atBottom) ? value < 60 : value > 200, $"corner {x}, {y} is {value}");
            }
        }
    }

    // By hand: row 0 and column 0 swapped leave the corner in place, so 1 and 5 agree in it; a second place tells them apart.
    [Fact]
    public void Decode_Transposed_SwapsRowsAndColumns()
    {
        using var stored = new SKBitmap(40, 20);
        using (var canvas = new SKCanvas(stored))
        {
            canvas.Clear(SKColors.White);
            canvas.DrawRect(24, 0, 16, 8, new SKPaint { Color = SKColors.Black });
        }
        var grey = PictureDecoder.Decode(DrawnForm.WithOrientation(DrawnForm.Jpeg(stored, 95), 5), 4000, Limits).Grey!;
        Assert.True(grey.Values[32 * 20 + 3] < 60 && grey.Values[3 * 20 + 15] > 200);
    }

    [Fact]
    public void Decode_LargeJpeg_IsHalvedWhileItStaysAboveWhatIsAskedFor()
    {
        using var picture = new SKBitmap(4000, 3000);
        picture.Erase(SKColors.Gray);
        var (half, whole) = (PictureDecoder.Decode(DrawnForm.Jpeg(picture), 1800, Limits), PictureDecoder.Decode(DrawnForm.Jpeg(picture), 2001, Limits));
        Assert.Equal((2000, 1500, false), (half.Grey!.WidthPx, half.Grey.HeightPx, half.IsWhole));
        Assert.Equal((4000, 3000, true), (whole.Grey!.WidthPx, whole.Grey.HeightPx, whole.IsWhole));
    }

    [Fact]
    public void Decode_LargePng_IsHalvedToo()
    {
        using var picture = new SKBitmap(2400, 1200);
        picture.Erase(SKColors.Gray);
        Assert.Equal(1200, PictureDecoder.Decode(DrawnForm.Png(picture), 1000, Limits).Grey!.WidthPx);
    }

    [Fact]
    public void Decode_SeeThroughPng_IsSeenOnWhite()
    {
        using var picture = new SKBitmap(new SKImageInfo(40, 20, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        picture.Erase(new SKColor(0, 0, 0, 0));
        Assert.All(PictureDecoder.Decode(DrawnForm.Png(picture), 1000, Limits).Grey!.Values, v => Assert.Equal(255, v));
    }

    // A header alone says 60 000 × 60 000: nothing of it may be unpacked.
    [Fact]
    public void Decode_PngThatSaysItIsHuge_IsRefusedFromItsHeader()
    {
        byte[] header = [0x89, .. "PNG\r\n\x1a\n"u8, 0, 0, 0, 13, .. "IHDR"u8, 0, 0, 0xEA, 0x60, 0, 0, 0xEA, 0x60, 8, 2, 0, 0, 0];
        byte[] png = [.. header, .. Crc(header.AsSpan(12, 17)), 0, 0, 0, 10, .. "IDAT"u8, 0x78, 0x9C, 0x63, 0, 0, 0, 2, 0, 1, 0, 0, 0, 0, 0];
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(ScanRemarkKind.PictureTooLarge, PictureDecoder.Decode(png, 1800, Limits).Problem!.Kind);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100_000);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.7)]
    [InlineData(0.98)]
    public void Decode_CutShort_IsRefusedAsDamaged(double keptFraction)
    {
        using var page = DrawnForm.Draw(DrawnForm.Layout(), "X", []);
        foreach (var file in new[] { DrawnForm.Jpeg(page), DrawnForm.Png(page) })
            Assert.Equal(ScanRemarkKind.FileDamaged, PictureDecoder.Decode(file[..(int)(file.Length * keptFraction)], 1800, Limits).Problem!.Kind);
    }

    [Theory]
    [InlineData("GIF89a, so it says")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>")]
    [InlineData("Lena\n")]
    public void Decode_AnotherKindOfFile_IsSaid(string text) =>
        Assert.Equal(ScanRemarkKind.FileKind, PictureDecoder.Decode(System.Text.Encoding.UTF8.GetBytes(text), 1800, Limits).Problem!.Kind);

    [Fact]
    public void Decode_JpegOfManyScans_IsRefused()
    {
        using var page = new SKBitmap(1000, 1000);
        page.Erase(SKColors.White);
        var jpeg = DrawnForm.Jpeg(page);
        byte[] scans = [.. Enumerable.Repeat<byte[]>([0xFF, 0xDA], 101).SelectMany(b => b)];
        Assert.Equal(ScanRemarkKind.FileDamaged, PictureDecoder.Decode((byte[])[.. jpeg, .. scans], 1800, Limits).Problem!.Kind);
        Assert.NotNull(PictureDecoder.Decode(jpeg, 1800, Limits).Grey);
    }

    [Fact]
    public void Decode_TooFewPixels_IsSaid()
    {
        using var page = new SKBitmap(640, 480);
        Assert.Equal(ScanRemarkKind.PictureTooSmall, PictureDecoder.Decode(DrawnForm.Png(page), 1800, new ReadingLimits()).Problem!.Kind);
    }

    // As the PNG standard reckons it: the remainder of division by its polynomial, bits reflected.
    private static byte[] Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var i = 0; i < 8; i++) crc = (crc & 1) == 1 ? crc >> 1 ^ 0xEDB88320 : crc >> 1;
        }
        crc = ~crc;
        return [(byte)(crc >> 24), (byte)(crc >> 16), (byte)(crc >> 8), (byte)crc];
    }
}
