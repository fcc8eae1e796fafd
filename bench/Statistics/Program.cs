using System.Diagnostics;
using System.Globalization;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Statistics;

// Times fits of the response model beside one plain pass of logistics over the same trials, and writes the trials for R.
var folder = args.Length > 0 ? args[0] : Path.GetTempPath();
var only = args.Length > 1 ? args[1] : null;
ResponseOptions still = new() { DriftSdLogits = 0 }, wandering = new();
(string Name, int Pupils, int Each, int Levels, int Lessons, ResponseOptions Options)[] sizes =
[
    ("class, still", 30, 15, 15, 6, still with { GridPupilCount = 0 }),
    ("class, still, grid", 30, 15, 15, 6, still),
    ("class, wandering", 30, 15, 15, 6, wandering with { GridPupilCount = 0 }),
    ("class, wandering, grid", 30, 15, 15, 6, wandering),
    ("unit, no second reading", 30, 180, 15, 6, wandering with { GridPupilCount = 0, ChoicePupilCount = 0 }),
    ("unit, wandering", 30, 180, 15, 6, wandering with { GridPupilCount = 0 }),
    ("district", 12_000, 15, 40, 1, still),
    ("district, six lessons", 12_000, 15, 40, 6, still),
    ("district, wandering", 12_000, 15, 40, 6, wandering),
    ("country", 400_000, 15, 40, 1, still),
];
if (folder == "study")
{
    Study.Run(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 2000, args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 400);
    return;
}
if (only is null)
{
    Console.WriteLine($"{"",-24}{"trials",10}{"fit ms",10}{"best",9}{"cpu ms",9}{"pass ms",10}{"ratio",8}{"passes",8}{"count ms",10}{"peak MB",9}");
    // Each in a process of its own, so that the memory is its own.
    foreach (var (name, _, _, _, _, _) in sizes)
    {
        using var child = Process.Start(Environment.ProcessPath!, [typeof(Trials).Assembly.Location, folder, name]);
        child.WaitForExit();
    }
    Refits.Run();
    return;
}
if (only is "refit")
{
    Refits.Run();
    return;
}
foreach (var size in sizes)
{
    if (size.Name != only) continue;
    IReadOnlyList<ResponseTrial> trials = [];
    var counting = Timed(() => trials = size.Pupils <= 30
        ? [.. Trials.Of(size.Pupils, size.Each, size.Levels, size.Lessons, 1)]
        : CountedTrials.Of(Trials.Of(size.Pupils, size.Each, size.Levels, size.Lessons, 1)));
    var data = new ResponseData(Trials.Pupils(size.Pupils), Trials.Levels(size.Levels), trials);
    if (size.Name is "class, still" or "district") Write(Path.Combine(folder, $"{size.Name.Split(',')[0]}.csv"), data);
    var work = new ResponseWork(ThreadCount: Environment.ProcessorCount);
    var rounds = size.Pupils <= 30 ? 100 : size.Pupils <= 12_000 ? 9 : 3;
    var (fits, passes) = (new double[rounds], new double[rounds]);
    var count = 0;
    for (var warm = 0; warm < (size.Pupils <= 30 ? 60 : 1); warm++) ResponseModel.Fit(data, size.Options, work);
    var cpu = Process.GetCurrentProcess().TotalProcessorTime;
    var passing = 0.0;
    for (var round = 0; round < rounds; round++)
    {
        passing += passes[round] = Timed(() => Pass(size.Pupils * size.Each));
        fits[round] = Timed(() => count = ResponseModel.Fit(data, size.Options, work).RoundCount);
    }
    var used = ((Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalMilliseconds - passing) / rounds;
    var (fit, pass) = (Median(fits), Median(passes));
    Console.WriteLine($"{size.Name,-24}{size.Pupils * size.Each,10}{fit,10:0.00}{fits.Min(),9:0.00}{used,9:0.0}{pass,10:0.000}{fit / pass,8:0}{count,8}{counting,10:0}{Process.GetCurrentProcess().PeakWorkingSet64 >> 20,9}");
}

static double Timed(Action work)
{
    var watch = Stopwatch.StartNew();
    work();
    return watch.Elapsed.TotalMilliseconds;
}

// One logistic a trial, one after the other: what no fit can be faster than without counting trials together.
static void Pass(int count)
{
    var sum = 0.0;
    for (var trial = 0; trial < count; trial++) sum += 1 / (1 + Math.Exp(trial % 40 * .1 - 1));
    GC.KeepAlive(sum);
}

static double Median(double[] times) => times.Order().ElementAt(times.Length / 2);

static void Write(string path, ResponseData data) => File.WriteAllLines(path,
    data.Trials.SelectMany(t => Enumerable.Range(0, t.Trials).Select(k => string.Create(CultureInfo.InvariantCulture, $"{t.Pupil},{t.Level},{(k < t.Successes ? 1 : 0)}"))).Prepend("pupil,level,success"));
