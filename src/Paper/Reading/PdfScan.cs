using System.Globalization;
using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans.Intake;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Exceptions;
using UglyToad.PdfPig.Graphics.Colors;
using UglyToad.PdfPig.Tokens;

namespace Slantwise.Paper.Reading;

/// <summary>The pages of a scanned PDF, one at a time.</summary>
internal sealed class PdfScan : IDisposable
{
    // A scanner's page is one picture from edge to edge; a smaller one is a logo.
    private const double WholePageFraction = 0.6;

    private const long BytesAPixel = 4;

    private readonly byte[] _bytes;
    private readonly ReadingLimits _limits;
    private readonly PdfDocument _document;

    private PdfScan(byte[] bytes, PdfDocument document, ReadingLimits limits) => (_bytes, _document, _limits) = (bytes, document, limits);

    /// <summary>How many pages there are.</summary>
    public int PageCount => _document.NumberOfPages;

    /// <summary>Opens a file, or says why that cannot be done.</summary>
    public static (PdfScan? Scan, ScanRemark? Problem) Open(byte[] bytes, ReadingLimits limits)
    {
        try
        {
            var document = PdfDocument.Open(bytes, new ParsingOptions
            {
                UseLenientParsing = true,
                SkipMissingFonts = true,
                FilterProvider = new CappedFilters(BytesAPixel * limits.MaxPixelCount),
            });
            if (document.NumberOfPages > 0) return (new PdfScan(bytes, document, limits), null);
            document.Dispose();
            return (null, new ScanRemark(ScanRemarkKind.FileDamaged));
        }
        catch (PdfDocumentEncryptedException)
        {
            return (null, new ScanRemark(ScanRemarkKind.PdfLocked));
        }
        catch (Exception failure) when (IsOfTheFile(failure))
        {
            return (null, new ScanRemark(ScanRemarkKind.FileDamaged));
        }
    }

    /// <summary>A page as a picture, or why there is none.</summary>
    /// <param name="number">The page, from 1.</param>
    /// <param name="sidePx">The longer side wanted.</param>
    /// <param name="cancel">Stops a program that is asked for help.</param>
    public async Task<DecodedPicture> PageAsync(int number, int sidePx, CancellationToken cancel)
    {
        ScanRemarkKind why;
        try
        {
            var page = _document.GetPage(number);
            var images = page.GetImages().ToList();
            if (WholePage(page, images) is { } image && PictureOf(image, page.Rotation.Value, sidePx) is { } picture) return picture;
            why = images.Count == 0 ? ScanRemarkKind.PdfWithoutPicture : ScanRemarkKind.PdfNeedsPoppler;
        }
        catch (Exception failure) when (IsOfTheFile(failure))
        {
            why = ScanRemarkKind.FileDamaged;
        }
        return await Poppler.PageAsync(_bytes, number, sidePx, cancel) is { } drawn
            ? new DecodedPicture(drawn, sidePx >= _limits.FineSidePx, null)
            : new DecodedPicture(null, true, new ScanRemark(why));
    }

    public void Dispose() => _document.Dispose();

    private static IPdfImage? WholePage(Page page, List<IPdfImage> images)
    {
        var covering = images.Where(i => i.BoundingBox.Area >= WholePageFraction * page.Width * page.Height).ToList();
        // Several on one page are layers, text apart from paper: only a program that draws can put them together.
        return covering is [var only] && !only.IsImageMask ? only : null;
    }

    private DecodedPicture? PictureOf(IPdfImage image, int turnDeg, int sidePx)
    {
        if ((long)image.WidthInSamples * image.HeightInSamples > _limits.MaxPixelCount)
        {
            return new DecodedPicture(null, true, new ScanRemark(
                ScanRemarkKind.PictureTooLarge, Text(image.WidthInSamples), Text(image.HeightInSamples), Text(_limits.MaxPixelCount / 1_000_000)));
        }
        var filter = FilterOf(image);
        DecodedPicture? picture = null;
        if (filter == "DCTDecode") picture = PictureDecoder.Decode(image.RawMemory, sidePx, _limits);
        else if (filter is "FlateDecode" or "LZWDecode" or "RunLengthDecode" or "" && Samples(image, sidePx) is { } grey)
            picture = new DecodedPicture(grey, Math.Max(grey.WidthPx, grey.HeightPx) >= Math.Max(image.WidthInSamples, image.HeightInSamples), null);
        return picture is { Grey: { } upright } ? picture with { Grey = GreyPixels.Turned(upright, turnDeg / 90) } : picture;
    }

    // Samples laid bare by the library; what has a palette or a colour space of its own is left to a program that draws.
    private static GreyImage? Samples(IPdfImage image, int sidePx)
    {
        if (image.BitsPerComponent is not (1 or 8) || !image.TryGetBytesAsMemory(out var memory)) return null;
        var (w, h) = (image.WidthInSamples, image.HeightInSamples);
        var samples = memory.Span;
        var components = image.ColorSpaceDetails switch
        {
            DeviceGrayColorSpaceDetails => 1,
            DeviceRgbColorSpaceDetails => 3,
            _ => 0,
        };
        if (w < 1 || h < 1 || components == 0) return null;
        var isInverted = image.Decode is [var first, var second, ..] && first > second;
        var values = new byte[w * h];
        if (components == 3)
        {
            if (samples.Length < values.Length * 3) return null;
            for (var i = 0; i < values.Length; i++) values[i] = (byte)(77 * samples[3 * i] + 150 * samples[3 * i + 1] + 29 * samples[3 * i + 2] >> 8);
        }
        else if (samples.Length >= values.Length)
        {
            samples[..values.Length].CopyTo(values);
            // The library gives a bit as a byte of 0 or 1, or as one of 0 or 255.
            if (image.BitsPerComponent == 1 && values.Max() <= 1) for (var i = 0; i < values.Length; i++) values[i] *= 255;
        }
        else if (image.BitsPerComponent == 1 && samples.Length >= (w + 7) / 8 * h)
        {
            var stride = (w + 7) / 8;
            for (var y = 0; y < h; y++)
                for (var x = 0; x < w; x++) values[y * w + x] = (samples[y * stride + x / 8] & (0x80 >> (x % 8))) != 0 ? (byte)255 : (byte)0;
        }
        else return null;
        if (isInverted) for (var i = 0; i < values.Length; i++) values[i] = (byte)(255 - values[i]);
        return GreyPixels.Halved(new GreyImage(w, h, values), sidePx);
    }

    private static string FilterOf(IPdfImage image)
    {
        if (!image.ImageDictionary.TryGet(NameToken.Filter, out var token) && !image.ImageDictionary.TryGet(NameToken.F, out token)) return "";
        return token switch
        {
            NameToken name => name.Data,
            ArrayToken { Data: [NameToken only] } => only.Data,
            _ => "several",
        };
    }

    // A library for a format with thirty years of dialects fails in many ways on a broken file; what is not the file's is not caught.
    private static bool IsOfTheFile(Exception failure) => failure is not (OperationCanceledException or OutOfMemoryException);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
