using CsCheck;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Surface.Tests.Paper.Reading;

/// <summary>Broken files of all kinds: each gives a page with a problem or a page without one, and nothing is thrown.</summary>
public sealed class ReadingFuzzTests
{
    private static readonly ReadingLimits Limits = new() { MinSidePx = 50, MaxTime = TimeSpan.FromSeconds(30) };

    private static async Task ReadsOrSaysAsync(byte[] bytes)
    {
        var expected = new ExpectedForms(DrawnForm.School, (_, _) => Task.FromResult<Slantwise.Engines.Marks.SheetLayout?>(DrawnForm.Layout()));
        var count = 0;
        await foreach (var page in new PageReader(Limits).ReadAsync(ScanFile.Of("x", bytes), expected))
        {
            count++;
            Assert.True(page.Problem is not null ? page.Forms.Count == 0 && page.Picture is null : page.Forms.Count > 0 && page.Picture is not null);
        }
        Assert.True(count > 0);
    }

    // Bytes set, runs cut out or doubled, ends cut off: what cameras' cards, mail and bad will do to a file. Early places more often: there stand the sizes.
    private static byte[] Broken(byte[] file, Random random)
    {
        var bytes = (byte[])file.Clone();
        for (var changes = random.Next(1, 7); changes > 0 && bytes.Length > 0; changes--)
        {
            var at = (int)(Math.Pow(random.NextDouble(), 3) * bytes.Length);
            var run = random.Next(1, 2000);
            switch (random.Next(8))
            {
                case < 5: bytes[at] = (byte)random.Next(256); break;
                case 5: bytes = [.. bytes.Take(at), .. bytes.Skip(at + run)]; break;
                case 6: bytes = [.. bytes.Take(at + run), .. bytes.Skip(at)]; break;
                default: bytes = bytes[..(bytes.Length - at / 2)]; break;
            }
        }
        return bytes;
    }

    private static async Task BreakAsync(byte[] file, int times, int seed)
    {
        var random = new Random(seed);
        for (var i = 0; i < times; i++)
        {
            var broken = Broken(file, random);
            try
            {
                await ReadsOrSaysAsync(broken);
            }
            catch (Exception failure) when (failure is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"Seed {seed}, file {i}: {failure}");
            }
        }
    }

    [Fact]
    public async Task Read_BrokenJpeg_ReadsOrSays()
    {
        using var page = DrawnForm.Draw(DrawnForm.Layout(), "X", ["Level-1-1-1"], pxPerMm: 2);
        await BreakAsync(DrawnForm.Jpeg(page), 250, seed: 1);
    }

    [Fact]
    public async Task Read_BrokenPng_ReadsOrSays()
    {
        using var page = DrawnForm.Draw(DrawnForm.Layout(), "X", ["Level-1-1-1"], pxPerMm: 2);
        await BreakAsync(DrawnForm.Png(page), 250, seed: 2);
    }

    [Fact]
    public async Task Read_BrokenPdf_ReadsOrSays()
    {
        using var page = DrawnForm.Draw(DrawnForm.Layout(), "X", ["Level-1-1-1"], pxPerMm: 2);
        var pdf = PdfScanTests.PdfOf(new PdfScanTests.Image(DrawnForm.Jpeg(page, 30), page.Width, page.Height, "DCTDecode"));
        // Most bytes are the picture's: without it nearly every change hits what holds the file together.
        var bare = PdfScanTests.PdfOf(new PdfScanTests.Image(PdfScanTests.Packed(new byte[100]), 10, 10, "FlateDecode"));
        await BreakAsync(pdf, 60, seed: 3);
        await BreakAsync(bare, 120, seed: 4);
    }

    [Fact]
    public async Task Read_AnyBytes_ReadsOrSays()
    {
        var random = new Random(5);
        byte[][] heads = [[], [0xFF, 0xD8, 0xFF], [0x89, .. "PNG\r\n\x1a\n"u8], [.. "%PDF-1.7\n"u8]];
        for (var i = 0; i < 500; i++)
        {
            var bytes = new byte[random.Next(300)];
            random.NextBytes(bytes);
            await ReadsOrSaysAsync([.. heads[i % heads.Length], .. bytes]);
        }
    }

    [Fact]
    public void SheetCode_AnyText_IsNoneOrWritesTheSameTextAgain()
    {
        var text = DrawnForm.Code().Write(DrawnForm.School);
        var letters = Gen.OneOf(Gen.Char["0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"], Gen.Char);
        Gen.OneOf(
            letters.Array[0, 60].Select(c => new string(c)),
            Gen.Select(Gen.Int[0, text.Length - 1], letters).Select((at, c) => text[..at] + c + text[(at + 1)..]))
            .Sample(any =>
            {
                var code = SheetCode.Read(any, DrawnForm.School);
                Assert.True(code is null || code.Write(DrawnForm.School) == any);
                _ = SheetCode.IsSheets(any);
            }, iter: 20_000);
        Assert.Equal(DrawnForm.Code(), SheetCode.Read(text, DrawnForm.School));
    }
}
