using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Paper.Reading;

/// <summary>Reads photos and scanned PDFs: unpacks a page, finds its codes, and has each form's fields read.</summary>
/// <param name="limits">What a file may cost.</param>
public sealed class PageReader(ReadingLimits limits) : IPageReader
{
    /// <inheritdoc/>
    public async IAsyncEnumerable<ReadPage> ReadAsync(ScanFile file, ExpectedForms expected, [EnumeratorCancellation] CancellationToken cancel = default)
    {
        var watch = Stopwatch.StartNew();
        var (bytes, problem) = await BytesAsync(file, cancel);
        if (bytes is null)
        {
            yield return Page(file, 1, problem!);
            yield break;
        }
        var tag = SheetCode.TagOf(bytes);
        if (!IsPdf(bytes))
        {
            if (expected.PageNumbers?.Contains(1) != false)
                yield return await PageAsync(file, 1, tag, side => Task.FromResult(PictureDecoder.Decode(bytes, side, limits)), expected, watch, cancel);
            yield break;
        }
        (var scan, problem) = PdfScan.Open(bytes, limits);
        if (scan is null)
        {
            yield return Page(file, 1, problem!);
            yield break;
        }
        using (scan)
        {
            for (var number = 1; number <= scan.PageCount; number++)
            {
                if (expected.PageNumbers?.Contains(number) == false) continue;
                if (number > limits.MaxPageCount)
                {
                    yield return Page(file, number, new ScanRemark(ScanRemarkKind.TooManyPages, Text(limits.MaxPageCount), Text(scan.PageCount)));
                    yield break;
                }
                if (watch.Elapsed > limits.MaxTime)
                {
                    yield return Page(file, number, TooSlow);
                    yield break;
                }
                var page = number;
                yield return await PageAsync(file, page, tag ^ page, side => scan.PageAsync(page, side, cancel), expected, watch, cancel);
            }
        }
    }

    private ScanRemark TooSlow => new(ScanRemarkKind.TooSlow, Text((long)limits.MaxTime.TotalSeconds));

    private async Task<ReadPage> PageAsync(
        ScanFile file, int number, long tag, Func<int, Task<DecodedPicture>> decode, ExpectedForms expected, Stopwatch watch, CancellationToken cancel)
    {
        var times = default(ReadTimes);
        ReadPage? coarse = null;
        foreach (var side in new[] { limits.UsualSidePx, limits.FineSidePx })
        {
            cancel.ThrowIfCancellationRequested();
            var started = Stopwatch.GetTimestamp();
            var picture = await decode(side);
            times = times with { DecodeS = times.DecodeS + Since(started) };
            if (picture.Grey is not { } grey) return coarse ?? Page(file, number, picture.Problem!) with { Times = times };

            started = Stopwatch.GetTimestamp();
            var codes = CodeFinder.Find(grey, () => watch.Elapsed > limits.MaxTime || cancel.IsCancellationRequested);
            times = times with { CodeS = times.CodeS + Since(started) };
            started = Stopwatch.GetTimestamp();
            var forms = await FormsAsync(grey, codes, expected, cancel);
            times = times with { ReadS = times.ReadS + Since(started) };

            var page = new ReadPage(file.Name, number, null, forms, new GreyPicture(grey, tag), times);
            if (picture.IsWhole || forms.All(IsSettled) || watch.Elapsed > limits.MaxTime) return Better(coarse, page);
            coarse = page;
        }
        return coarse!;
    }

    // With more pixels a form may be found that was not; one that was refused for its light or its edges stays so.
    private static bool IsSettled(ReadForm form) => form.CodeFound switch
    {
        CodeFound.Read => form.Layout is null || form.Reading.Fault is PageFault.None or PageFault.CutOff or PageFault.BadLight,
        CodeFound.OtherSchool or CodeFound.Foreign => true,
        _ => false,
    };

    private static ReadPage Better(ReadPage? coarse, ReadPage fine) =>
        coarse is not null && ReadCount(coarse) > ReadCount(fine) ? coarse with { Times = fine.Times } : fine;

    private static int ReadCount(ReadPage page) => page.Forms.Sum(f => (f.Reading.Fault == PageFault.None ? 2 : 0) + (f.CodeFound == CodeFound.Read ? 1 : 0));

    private static async Task<IReadOnlyList<ReadForm>> FormsAsync(GreyImage grey, IReadOnlyList<SeenCode> codes, ExpectedForms expected, CancellationToken cancel)
    {
        var forms = new List<ReadForm>();
        foreach (var seen in codes) forms.Add(await FormAsync(grey, seen, expected, cancel));
        // A page without any code that can be read may still be a form of ours.
        return forms.Count > 0 ? forms : [WithoutCode(grey, CodeFound.None, null, expected)];
    }

    private static async Task<ReadForm> FormAsync(GreyImage grey, SeenCode seen, ExpectedForms expected, CancellationToken cancel)
    {
        if (seen.Text is not { } text) return WithoutCode(grey, CodeFound.Damaged, seen.Sighting, expected);
        if (SheetCode.Read(text, expected.SchoolId) is not { } code)
            return new ReadForm(SheetCode.IsSheets(text) ? CodeFound.OtherSchool : CodeFound.Foreign, null, null, null, NotFound);
        var layout = await expected.LayoutOf(code.LayoutTag, cancel);
        return new ReadForm(CodeFound.Read, code, code.LayoutTag, layout, layout is null ? NotFound : FormReader.Read(grey, layout, seen.Sighting));
    }

    private static ReadForm WithoutCode(GreyImage grey, CodeFound found, CodeSighting? sighting, ExpectedForms expected)
    {
        FormReading? last = null;
        foreach (var known in expected.WithoutCode)
        {
            var reading = FormReader.Read(grey, known.Layout, sighting);
            if (reading is { Fault: PageFault.None, Map: { } map } && OutlineFit.Of(grey, known.Layout, map))
                return new ReadForm(found, null, known.LayoutTag, known.Layout, reading);
            if (last is null || reading.Fault != PageFault.NotFound) last = reading;
        }
        return new ReadForm(found, null, null, null, last is null or { Fault: PageFault.None } ? NotFound : last with { Fields = [] });
    }

    private static FormReading NotFound => new(PageFault.NotFound, [], null);

    private async Task<(byte[]? Bytes, ScanRemark? Problem)> BytesAsync(ScanFile file, CancellationToken cancel)
    {
        try
        {
            await using var stream = await file.Open(cancel);
            using var bytes = new MemoryStream();
            var buffer = new byte[1 << 16];
            for (var count = await stream.ReadAsync(buffer, cancel); count > 0; count = await stream.ReadAsync(buffer, cancel))
            {
                if (bytes.Length + count > limits.MaxByteCount)
                    return (null, new ScanRemark(ScanRemarkKind.FileTooLarge, Text(limits.MaxByteCount / 1_000_000)));
                bytes.Write(buffer, 0, count);
            }
            return bytes.Length == 0 ? (null, new ScanRemark(ScanRemarkKind.FileEmpty)) : (bytes.ToArray(), null);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, new ScanRemark(ScanRemarkKind.FileNotOpened, failure.Message));
        }
    }

    // The mark may stand a little into the file: a printer's or a scanner's own words before it are usual.
    private static bool IsPdf(byte[] bytes) => bytes.AsSpan(0, Math.Min(1024, bytes.Length)).IndexOf("%PDF-"u8) >= 0;

    private static ReadPage Page(ScanFile file, int number, ScanRemark problem) => new(file.Name, number, problem, [], null, default);

    private static double Since(long started) => Stopwatch.GetElapsedTime(started).TotalSeconds;

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
