using System.Diagnostics;
using System.Globalization;
using Slantwise.Bench.Planning;
using Slantwise.Engines.Planning.Groups;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Engines.Planning.Practice.Changes;
using Slantwise.Engines.Planning.Space;

// Times what a teacher waits for, then holds groups against CP-SAT on invented classes: `dotnet run -c Release -- [CLASSES] [SECONDS]`.
var classes = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 40;
var limitS = args.Length > 1 ? double.Parse(args[1], CultureInfo.InvariantCulture) : 3;

var plan = new PracticePlan { PupilCount = 30, MatCount = 10, LessonS = 3000, TalkS = 600, SetCount = 3, TrialsASet = 5, BetweenSetsS = 60, ActionS = 8, EnterS = 5, LeaveS = 5, RestS = 20, RecordS = 10 };
Say("one lesson by the formulas", Median(() => PracticeOutlook.Of(plan)));
Say("400 simulated lessons", Median(() => PracticeRanges.Of(plan, TimeSpread.Usual, 400, 1)));
Say("what would give 2 trials more", Median(() => MoreTrials.Of(plan, new(16, 300, 1, 2, 3, true), 2)));
var hall = new Hall(27, 15, [new(new(0, 12, 8, 3), true)]);
Say("14 mats in a hall of 27 x 15 m", Median(() => MatLayout.Of(hall, new(1.83, 1.22, 1, 1, false), [.. Enumerable.Repeat(1.7, 14)])));
Say("30 mats in it", Median(() => MatLayout.Of(hall, new(1.83, 1.22, 1, 1, false), new double[30])));

foreach (var (wishes, groups) in new[] { (12, 10), (12, 7), (30, 10), (30, 7), (50, 10) })
{
    var (same, fewer, more, unproved, otherUnproved) = (0, 0, 0, 0, 0);
    var (ownMs, otherMs) = (new List<double>(), new List<double>());
    for (var seed = 0; seed < classes; seed++)
    {
        var request = InventedWishes.Of(seed, wishes, groups, GroupGoal.Any);
        var (division, own) = Timed(() => GroupDivision.Of(request));
        var ((met, isProved), other) = Timed(() => OtherSolver.MostMet(request, limitS));
        ownMs.Add(own);
        otherMs.Add(other);
        var unmet = request.Wishes.Count - met;
        if (unmet is null || unmet > division.UnmetWishes.Count) fewer++;
        else if (unmet == division.UnmetWishes.Count) same++;
        else more++;
        if (division.IsFewestProved && unmet < division.UnmetWishes.Count) Console.WriteLine($"  class {seed}: proved, but wrong");
        if (!division.IsFewestProved) unproved++;
        if (!isProved) otherUnproved++;
    }
    Console.WriteLine($"{wishes} wishes, {groups} groups: as many left out {same}, fewer {fewer}, more {more}; unproved {unproved}, CP-SAT {otherUnproved}; own {Spread(ownMs)}, CP-SAT {Spread(otherMs)}");
}
foreach (var goal in new[] { GroupGoal.Mix, GroupGoal.Match })
{
    var (same, nearer, farther, otherProved) = (0, 0, 0, 0);
    var (ownMs, otherMs) = (new List<double>(), new List<double>());
    for (var seed = 0; seed < Math.Max(1, classes / 2); seed++)
    {
        var request = InventedWishes.Of(seed, 12, 10, goal);
        var (division, own) = Timed(() => GroupDivision.Of(request));
        var kept = Enumerable.Range(0, request.Wishes.Count).Except(division.UnmetWishes);
        var ((groupOf, isProved), other) = Timed(() => OtherSolver.Nearest(request, kept, limitS));
        ownMs.Add(own);
        otherMs.Add(other);
        if (isProved) otherProved++;
        var gain = groupOf is null ? 1 : (division.BetweenFraction - GroupCheck.Of(request, groupOf).BetweenFraction) * (goal == GroupGoal.Mix ? -1 : 1);
        if (Math.Abs(gain!.Value) < 1e-9) same++;
        else if (gain > 0) nearer++;
        else farther++;
    }
    Console.WriteLine($"{goal}, 12 wishes, 10 groups: as near {same}, nearer {nearer}, farther {farther}; CP-SAT proved {otherProved}; own {Spread(ownMs)}, CP-SAT {Spread(otherMs)}");
}

static (T Answer, double TookMs) Timed<T>(Func<T> work)
{
    var watch = Stopwatch.StartNew();
    var answer = work();
    return (answer, watch.Elapsed.TotalMilliseconds);
}

static double Median<T>(Func<T> work)
{
    var times = Enumerable.Range(0, 9).Select(_ => Timed(work).TookMs).Skip(2).Order().ToArray();
    return times[times.Length / 2];
}

static string Spread(List<double> timesMs)
{
    timesMs.Sort();
    return string.Create(CultureInfo.InvariantCulture, $"{timesMs[timesMs.Count / 2]:0.0} ms (p95 {timesMs[timesMs.Count * 95 / 100]:0}, most {timesMs[^1]:0})");
}

static void Say(string what, double tookMs) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {tookMs:0.0} ms"));
