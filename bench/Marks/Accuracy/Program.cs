using System.Diagnostics;
using System.Globalization;
using Slantwise.Bench.Accuracy;
using Slantwise.Surface.Tests.Marks;
using Slantwise.Surface.Tests.Marks.Measures;
using Slantwise.Surface.Tests.Marks.Photos.Faults;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var threads = int.Parse(Environment.GetEnvironmentVariable("THREADS") ?? "1");
switch (args)
{
    case ["study", var name, var first, var count, var file, .. var more]:
        var watch = Stopwatch.StartNew();
        var set = PageSet.All.First(s => s.Name == name);
        var study = new Study();
        set.Each(ulong.Parse(first), int.Parse(count), threads, (seed, fault) =>
        {
            study.Read(seed, fault, set.Photo, set.Hand, set.SheetOf(seed));
            // A long study can be looked at, and stopped, while it goes on.
            lock (study.All)
                if (study.All.Pages % AllFaults.InOrder.Count == 0 || study.All.Pages == int.Parse(count)) Keep(study, set, ulong.Parse(first), file, more);
        });
        PageSet.CleanUp();
        Console.WriteLine($"{watch.Elapsed.TotalSeconds:0} s");
        return 0;
    case ["traits", var file, var name, var first, var count]:
        TraitsTable.Write(file, PageSet.All.First(s => s.Name == name), ulong.Parse(first), int.Parse(count), threads);
        return 0;
    case ["fit", .. var parts]:
        ModelFit.Write(Console.Out, parts, threads);
        PageSet.CleanUp();
        return 0;
    case ["pictures", var file, var first, var count]:
        ContactSheet.Write(file, [.. AllFaults.InOrder.Skip(int.Parse(first)).Take(int.Parse(count))], 101);
        return 0;
    case ["picture", var file, var name, var seed, .. var keys]:
        var kind = PageSet.All.First(s => s.Name == name);
        var (number, page) = (ulong.Parse(seed), default(SimulatedPage));
        kind.Each(number, 1, 1, (_, fault) => page = SimulatedPage.Of(number, fault, kind.Photo, kind.Hand, sheet: kind.SheetOf(number)));
        if (keys is [var key]) ContactSheet.WriteField(file, page!, key);
        else ContactSheet.WriteOne(file, page!.Image);
        PageSet.CleanUp();
        return 0;
    default:
        Console.Error.WriteLine("study SET FIRST COUNT FILE [SVG] | traits FILE SET FIRST COUNT | fit SET:FIRST:COUNT:WEIGHT... | pictures FILE FIRST COUNT | picture FILE SET SEED [KEY]");
        return 2;
}

static void Keep(Study study, PageSet set, ulong first, string file, string[] more)
{
    using var text = new StreamWriter(file);
    StudyTables.Write(text, set, first, study.All.Pages, study);
    foreach (var wrong in study.SilentWrong.OrderBy(w => w.Seed)) text.WriteLine($"- wrong: {wrong}");
    foreach (var doubtful in study.DoubtfulOnes.OrderBy(w => w.Seed).Take(300)) text.WriteLine($"- doubtful: {doubtful}");
    if (more is [var svg]) File.WriteAllText(svg, ReliabilityPicture.Svg(study.Bins));
}
