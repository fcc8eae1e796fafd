using System.Diagnostics;
using SkiaSharp;
using Slantwise.Bench.Piles;
using Slantwise.Engines.Marks;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans.Intake;

// Times reading photos of 12 million pixels, beside unpacking them alone at the full size, and the memory of a pile of 200.
var layout = InventedForm.Layout();
var photos = Enumerable.Range(1, 10).Select(i => InventedForm.Photo(layout, i)).ToList();
Console.WriteLine($"photos of 4000 × 3000, {photos.Average(p => p.Length) / 1e6:0.0} MB");
var reader = new PageReader(new ReadingLimits());
var expected = new ExpectedForms(InventedForm.School, (_, _) => Task.FromResult<SheetLayout?>(layout));

var (whole, decode, code, read, total) = (new List<double>(), new List<double>(), new List<double>(), new List<double>(), new List<double>());
for (var round = 0; round < 40; round++)
{
    var photo = photos[round % photos.Count];
    var started = Stopwatch.GetTimestamp();
    using (SKBitmap.Decode(photo)) whole.Add(Since(started));
    started = Stopwatch.GetTimestamp();
    await foreach (var page in reader.ReadAsync(ScanFile.Of("photo.jpg", photo), expected))
    {
        if (page.Forms is not [{ Reading.Fault: PageFault.None }]) throw new InvalidOperationException("The form was not read.");
        total.Add(Since(started));
        decode.Add(page.Times.DecodeS * 1000);
        code.Add(page.Times.CodeS * 1000);
        read.Add(page.Times.ReadS * 1000);
    }
}
Console.WriteLine($"{"ms a page",-28}{"median",8}{"least",8}");
foreach (var (name, times) in new[] { ("unpacking alone, full size", whole), ("unpacking", decode), ("code", code), ("form", read), ("all of it", total) })
    Console.WriteLine($"{name,-28}{Median(times),8:0.0}{times.Min(),8:0.0}");
Console.WriteLine($"ratio of all to unpacking alone at the full size: {Median(total) / Median(whole):0.00} (least to least {total.Min() / whole.Min():0.00})");

GC.Collect();
var before = Process.GetCurrentProcess().WorkingSet64;
long most = 0;
var pages = 0;
for (var i = 0; i < 200; i++)
{
    await foreach (var page in reader.ReadAsync(ScanFile.Of("photo.jpg", photos[i % photos.Count]), expected))
    {
        pages += page.Forms.Count;
        most = Math.Max(most, Process.GetCurrentProcess().WorkingSet64);
    }
}
Console.WriteLine($"pile of {pages} pages: {most >> 20} MB at most, {before >> 20} MB before it");

static double Since(long started) => Stopwatch.GetElapsedTime(started).TotalMilliseconds;
static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);
