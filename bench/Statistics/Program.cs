using System.Diagnostics;
using System.Globalization;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Statistics;

// Times fits of the response model beside one plain pass of logistics over the same trials, and writes the trials for R.
var folder = args.Length > 0 ? args[0] : Path.GetTempPath();
(string Name, int Pupils, int Each, int Levels, ResponseOptions Options)[] sizes =
[
    ("class, point", 30, 15, 15, new() { GridPupilCount = 0 }),
    ("class, 5 x 5 grid", 30, 15, 15, new()),
    ("district", 6_000, 30, 20, new()),
    ("country", 200_000, 30, 20, new()),
];
Console.WriteLine($"{"",-20}{"trials",10}{"fit ms",10}{"pass ms",10}{"ratio",8}{"peak MB",9}");
foreach (var size in sizes)
{
    var data = Trials.Of(size.Pupils, size.Each, size.Levels, 1);
    if (size.Name != "class, 5 x 5 grid" && size.Pupils <= 6_000) Write(Path.Combine(folder, $"{size.Name.Split(',')[0]}.csv"), data);
    var work = new ResponseWork(ThreadCount: Environment.ProcessorCount);
    var rounds = size.Pupils <= 30 ? 30 : 3;
    var (fits, passes) = (new double[rounds], new double[rounds]);
    for (var round = 0; round < rounds; round++)
    {
        passes[round] = Timed(() => Pass(data));
        fits[round] = Timed(() => ResponseModel.Fit(data, size.Options, work));
    }
    var (fit, pass) = (Median(fits), Median(passes));
    Console.WriteLine($"{size.Name,-20}{data.Trials.Count,10}{fit,10:0.00}{pass,10:0.000}{fit / pass,8:0}{Process.GetCurrentProcess().PeakWorkingSet64 >> 20,9}");
}

static double Timed(Action work)
{
    var watch = Stopwatch.StartNew();
    work();
    return watch.Elapsed.TotalMilliseconds;
}

// One logistic a trial, one after the other: what no fit can be faster than without counting trials together.
static void Pass(ResponseData data)
{
    var sum = 0.0;
    foreach (var trial in data.Trials) sum += trial.Successes - 1 / (1 + Math.Exp(trial.Level * .1 - 1));
    GC.KeepAlive(sum);
}

static double Median(double[] times) => times.Order().ElementAt(times.Length / 2);

static void Write(string path, ResponseData data) => File.WriteAllLines(path,
    data.Trials.Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Pupil},{t.Level},{t.Successes}")).Prepend("pupil,level,success"));
