using System.Diagnostics;
using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Statistics;

/// <summary>What an entry in a lesson costs: the last hundred trials of a class come one by one, and each is followed by a refit. On one thread.</summary>
internal static class Refits
{
    public static void Run()
    {
        Console.WriteLine($"{"refit after an entry",-36}{"trials",8}{"best",9}{"median",9}{"slowest",9}  ms");
        foreach (var (name, each, lessons, levels) in new[] { ("30 pupils x 15, six lessons", 15, 6, 15), ("30 pupils x 30, one lesson", 30, 1, 15), ("30 pupils x 180, six lessons", 180, 6, 15), ("the same on 40 levels", 180, 6, 40) })
        {
            var trials = Trials.Of(30, each, levels, lessons, 1).OrderBy(t => t.Lesson).ToList();
            var first = trials.Count - 100;
            ResponseData Upto(int count) => new(Trials.Pupils(30), Trials.Levels(levels), trials[..count]);
            var times = new List<double>();
            for (var round = 0; round < 5; round++)
            {
                var fit = ResponseModel.Fit(Upto(first));
                for (var k = first + 1; k <= trials.Count; k++)
                {
                    var watch = Stopwatch.StartNew();
                    fit = ResponseModel.Refit(fit, Upto(k));
                    if (round > 0) times.Add(watch.Elapsed.TotalMilliseconds);
                }
            }
            times.Sort();
            Console.WriteLine($"{name,-36}{trials.Count,8}{times[0],9:0.00}{times[times.Count / 2],9:0.00}{times[^1],9:0.00}");
        }
        var random = new Random(1);
        var sets = Enumerable.Range(0, 30).Select(_ => Enumerable.Range(0, 6).Select(_ => new ExpectedSet(random.Next(6), 2, 5, .2 + .6 * random.NextDouble())).ToArray()).ToArray();
        var biases = Enumerable.Range(0, 60).Select(_ =>
        {
            var watch = Stopwatch.StartNew();
            PooledBias.Fit(sets);
            return watch.Elapsed.TotalMilliseconds;
        }).Skip(20).Order().ToList();
        Console.WriteLine($"{"bias of 30 pupils' predictions",-44}{biases[0],9:0.00}{biases[20],9:0.00}{biases[^1],9:0.00}");
    }
}
