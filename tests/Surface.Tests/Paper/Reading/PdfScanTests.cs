using System.IO.Compression;
using System.Text;
using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans.Intake;
using UglyToad.PdfPig.Tokens;

namespace Slantwise.Surface.Tests.Paper.Reading;

public sealed class PdfScanTests
{
    private static readonly SheetLayout Layout = DrawnForm.Layout();

    private static async Task<List<ReadPage>> ReadAsync(byte[] pdf, ReadingLimits? limits = null, IReadOnlySet<int>? pages = null)
    {
        var read = new List<ReadPage>();
        var expected = new ExpectedForms(DrawnForm.School, (tag, _) => Task.FromResult(tag == 5 ? Layout : null)) { PageNumbers = pages };
        await foreach (var page in new PageReader(limits ?? new ReadingLimits()).ReadAsync(ScanFile.Of("pile.pdf", pdf), expected)) read.Add(page);
        return read;
    }

    private static SKBitmap Page(long pupilTag, string marked) => DrawnForm.Draw(Layout, DrawnForm.Code(pupilTag: pupilTag).Write(DrawnForm.School), [marked]);

    private static string MarkOf(ReadPage page) => Assert.Single(Assert.Single(page.Forms).Reading.Fields, f => f.Verdict == MarkVerdict.Marked).Key;

    [Fact]
    public async Task Read_PagesOfJpegs_GivesEachInOrder()
    {
        using SKBitmap one = Page(1, "Level-1-1-1"), two = Page(2, "Level-1-1-2");
        var pages = await ReadAsync(PdfOf(new Image(DrawnForm.Jpeg(one), one.Width, one.Height, "DCTDecode"), new Image(DrawnForm.Jpeg(two), two.Width, two.Height, "DCTDecode")));
        Assert.Equal([(1, 1L, "Level-1-1-1"), (2, 2L, "Level-1-1-2")], pages.Select(p => (p.PageNumber, p.Forms[0].Code!.PupilTag, MarkOf(p))));
    }

    [Fact]
    public async Task Read_FlatePages_AreReadInGreyColourAndBlack()
    {
        using var page = Page(1, "Held-1-2-3");
        var pixels = page.GetPixelSpan().ToArray();
        byte[] grey = [.. Enumerable.Range(0, pixels.Length / 4).Select(i => pixels[4 * i + 1])];
        byte[] colour = [.. Enumerable.Range(0, pixels.Length / 4).SelectMany(i => new[] { pixels[4 * i], pixels[4 * i + 1], pixels[4 * i + 2] })];
        var (w, h) = (page.Width, page.Height);
        var bits = new byte[(w + 7) / 8 * h];
        for (var i = 0; i < grey.Length; i++) if (grey[i] > 128) bits[i / w * ((w + 7) / 8) + i % w / 8] |= (byte)(0x80 >> (i % w % 8));
        var pages = await ReadAsync(PdfOf(
            new Image(Packed(grey), w, h, "FlateDecode"), new Image(Packed(colour), w, h, "FlateDecode", "DeviceRGB"), new Image(Packed(bits), w, h, "FlateDecode", Bits: 1)));
        Assert.Equal(["Held-1-2-3", "Held-1-2-3", "Held-1-2-3"], pages.Select(MarkOf));
    }

    [Fact]
    public async Task Read_TurnedPage_IsRead()
    {
        using var page = Page(1, "Level-1-2-4");
        Assert.Equal("Level-1-2-4", MarkOf(Assert.Single(await ReadAsync(PdfOf(new Image(DrawnForm.Jpeg(page), page.Width, page.Height, "DCTDecode", TurnDeg: 90))))));
    }

    [Fact]
    public async Task Read_WhatTheLibraryCannotUnpack_IsDrawnByPoppler()
    {
        Tool.Run("pdftoppm", "-v");
        // Two halves of a page, one above the other, as some scanners write them: neither is the page.
        using var page = Page(1, "Next-1-1-3");
        using SKBitmap upper = new(page.Width, page.Height / 2), lower = new(page.Width, page.Height - page.Height / 2);
        Assert.True(page.ExtractSubset(upper, new SKRectI(0, 0, page.Width, page.Height / 2)));
        Assert.True(page.ExtractSubset(lower, new SKRectI(0, page.Height / 2, page.Width, page.Height)));
        var pdf = PdfOf([[new Image(DrawnForm.Jpeg(upper), upper.Width, upper.Height, "DCTDecode"), new Image(DrawnForm.Jpeg(lower), lower.Width, lower.Height, "DCTDecode")]]);
        Assert.Equal("Next-1-1-3", MarkOf(Assert.Single(await ReadAsync(pdf))));
    }

    [Fact]
    public async Task Read_OnePageBroken_LeavesTheOthersAlone()
    {
        using var page = Page(1, "Level-1-1-1");
        var jpeg = DrawnForm.Jpeg(page);
        var broken = jpeg[..3000];
        var pages = await ReadAsync(PdfOf(new Image(broken, page.Width, page.Height, "DCTDecode"), new Image(jpeg, page.Width, page.Height, "DCTDecode")));
        Assert.Equal(2, pages.Count);
        Assert.Equal(ScanRemarkKind.FileDamaged, pages[0].Problem!.Kind);
        Assert.Equal("Level-1-1-1", MarkOf(pages[1]));
    }

    [Fact]
    public async Task Read_SomePagesOnly_PassesOverTheOthers()
    {
        using var page = Page(1, "Level-1-1-1");
        var image = new Image(DrawnForm.Jpeg(page), page.Width, page.Height, "DCTDecode");
        Assert.Equal([2], (await ReadAsync(PdfOf(image, image, image), pages: new HashSet<int> { 2 })).Select(p => p.PageNumber));
    }

    [Fact]
    public async Task Read_MoreThanTheLimits_IsSaid()
    {
        using var page = Page(1, "Level-1-1-1");
        var image = new Image(DrawnForm.Jpeg(page), page.Width, page.Height, "DCTDecode");
        var pages = await ReadAsync(PdfOf(image, image, image), new ReadingLimits { MaxPageCount = 2 });
        Assert.Equal([null, null, ScanRemarkKind.TooManyPages], pages.Select(p => p.Problem?.Kind));
        Assert.Equal(ScanRemarkKind.PictureTooLarge, (await ReadAsync(PdfOf(image with { Width = 60_000, Height = 60_000 })))[0].Problem!.Kind);
        Assert.Equal(ScanRemarkKind.TooSlow, (await ReadAsync(PdfOf(image), new ReadingLimits { MaxTime = TimeSpan.Zero }))[0].Problem!.Kind);
    }

    [Theory]
    [InlineData("%PDF-1.7\n")]
    [InlineData("%PDF-1.4\n1 0 obj\n<</Type/Catalog/Pages 1 0 R>>\nendobj\ntrailer<</Root 1 0 R>>")]
    [InlineData("%PDF-1.4\n1 0 obj\n<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj\n<</Type/Pages/Kids[2 0 R 2 0 R]/Count 9>>endobj\ntrailer<</Root 1 0 R>>")]
    public async Task Read_PdfThatIsNone_IsSaid(string text)
    {
        var page = Assert.Single(await ReadAsync(Encoding.ASCII.GetBytes(text)));
        Assert.NotNull(page.Problem);
    }

    [Fact]
    public async Task Read_PdfNestedWithoutEnd_IsSaid()
    {
        var text = "%PDF-1.4\n1 0 obj\n<</Type/Catalog/Pages 2 0 R/Z " + new string('[', 100_000) + ">>endobj\ntrailer<</Root 1 0 R>>";
        Assert.NotNull(Assert.Single(await ReadAsync(Encoding.ASCII.GetBytes(text))).Problem);
    }

    [Fact]
    public void Decode_StreamThatUnpacksToMoreThanItMay_IsCountedAndNotUnpacked()
    {
        var filter = Assert.Single(new CappedFilters(1_000_000).GetNamedFilters([NameToken.FlateDecode]));
        var nothing = new DictionaryToken(new Dictionary<NameToken, IToken>());
        Assert.Equal(new byte[1_000_000], filter.Decode(Packed(new byte[1_000_000]), nothing, new CappedFilters(1), 0).ToArray());
        var bomb = Packed(new byte[40_000_000]);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Throws<InvalidDataException>(() => filter.Decode(bomb, nothing, new CappedFilters(1), 0));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2_000_000);
    }

    internal static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var stream = new ZLibStream(packed, CompressionLevel.Fastest)) stream.Write(bytes);
        return packed.ToArray();
    }

    internal static byte[] PdfOf(params Image[] pages) => PdfOf([.. pages.Select(p => new[] { p })]);

    // Written out by hand: pages of 595 × 842 points, their images one above the other.
    internal static byte[] PdfOf(Image[][] pages)
    {
        using var pdf = new MemoryStream();
        var offsets = new List<long>();
        Write("%PDF-1.5\n");
        var firstPage = 3;
        var count = pages.Sum(p => 2 + p.Length);
        Object(1, "<</Type/Catalog/Pages 2 0 R>>");
        var numbers = new List<int>();
        for (int i = 0, at = firstPage; i < pages.Length; at += 2 + pages[i].Length, i++) numbers.Add(at);
        Object(2, $"<</Type/Pages/Count {pages.Length}/Kids[{string.Join(' ', numbers.Select(n => $"{n} 0 R"))}]>>");
        for (var i = 0; i < pages.Length; i++)
        {
            var (number, images) = (numbers[i], pages[i]);
            var names = string.Concat(images.Select((_, k) => $"/I{k} {number + 2 + k} 0 R"));
            Object(number, $"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Rotate {images[0].TurnDeg}/Contents {number + 1} 0 R/Resources<</XObject<<{names}>>>>>>");
            var height = 842.0 / images.Length;
            var content = string.Concat(images.Select((_, k) => FormattableString.Invariant($"q 595 0 0 {height} 0 {842 - (k + 1) * height} cm /I{k} Do Q\n")));
            Object(number + 1, $"<</Length {content.Length}>>stream\n{content}endstream");
            for (var k = 0; k < images.Length; k++)
            {
                var image = images[k];
                Begin(number + 2 + k);
                Write($"<</Type/XObject/Subtype/Image/Width {image.Width}/Height {image.Height}/BitsPerComponent {image.Bits}/ColorSpace/{(image.Filter == "DCTDecode" ? "DeviceRGB" : image.Colours)}"
                    + $"/Filter/{image.Filter}/Length {image.Bytes.Length}>>stream\n");
                pdf.Write(image.Bytes);
                Write("\nendstream\nendobj\n");
            }
        }
        var table = pdf.Position;
        Write($"xref\n0 {count + 3}\n0000000000 65535 f \n{string.Concat(offsets.Select(o => $"{o:0000000000} 00000 n \n"))}trailer<</Size {count + 3}/Root 1 0 R>>\nstartxref\n{table}\n%%EOF\n");
        return pdf.ToArray();

        void Write(string text) => pdf.Write(Encoding.ASCII.GetBytes(text));
        void Begin(int number)
        {
            offsets.Add(pdf.Position);
            Write($"{number} 0 obj\n");
        }
        void Object(int number, string body)
        {
            Begin(number);
            Write(body + "\nendobj\n");
        }
    }

    internal sealed record Image(byte[] Bytes, int Width, int Height, string Filter, string Colours = "DeviceGray", int Bits = 8, int TurnDeg = 0);
}
