using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Engines.Tests.Statistics.Responses;

namespace Slantwise.Statistics;

/// <summary>What the seeded tests look at in small, with so many classes that the figures themselves are worth reading.</summary>
internal static class Study
{
    private static readonly ResponseOptions Drawn = new()
    {
        DriftSdLogits = 0, ChoicePupilCount = 0,
        Priors = new() { Middle = new(0, 1), DoseSlope = new(1, 0.5), OwnSlopeSdLogits = 0, TaskShareFraction = 0 },
    };

    /// <summary>Simulation-based calibration and coverage, as two tables.</summary>
    public static void Run(int draws, int classes)
    {
        Calibrate(draws);
        foreach (var way in Enum.GetValues<WayOfChoosing>())
        {
            Cover(way, classes, true);
            Cover(way, classes, false);
        }
    }

    private static void Calibrate(int draws)
    {
        var (fits, joints) = (new double[draws][], new double[draws][]);
        Parallel.For(0, draws, draw =>
        {
            var (data, truth) = DrawnClass.Draw(new Random(5_000_000 + draw), Drawn, false);
            var fit = ResponseModel.Fit(data, Drawn);
            var eta = truth.Ability(5, 0) - truth.Difficulties[7];
            fits[draw] = [Place(fit.Ability(3, 0), truth.Ability(3, 0)), Place(fit.Difficulty(2)!.Value, truth.Difficulties[2]),
                fit.Chance(5, 7, 0)!.WithinFraction(0, 1 / (1 + Math.Exp(-eta))), Place(fit.Coefficients[1].Value, truth.Slope)];
            var joint = new JointMode(data, Drawn.Priors, 1.2, 0.5).Estimated();
            joints[draw] = [Place(joint.Ability(3), truth.Ability(3, 0)), Place(joint.Difficulty(2), truth.Difficulties[2]), Place(joint.Eta(5, 7, 0), eta), Place(joint.Value(1), truth.Slope)];
        });
        Console.WriteLine($"{draws} classes drawn from the assumptions: chi-square of 20 places (limit 43.8), how many 90 % ranges hold");
        Console.WriteLine($"{"",-14}{"ability",16}{"level",16}{"both together",16}{"slope",16}");
        foreach (var (name, places) in new[] { ("the model", fits), ("joint mode", joints) })
            Console.WriteLine($"{name,-14}{string.Concat(Enumerable.Range(0, 4).Select(k => $"{$"{ChiSquare(places, k):0.0} / {Held(places, k):0.000}",16}"))}");
    }

    private static void Cover(WayOfChoosing way, int classes, bool hasOrderAndPrediction)
    {
        var found = new (double Held, double Square, double Slope, double Far)[classes];
        Parallel.For(0, classes, number =>
        {
            var (data, truth) = ChosenClass.Draw(new Random(6_000_000 + number), way, hasOrderAndPrediction);
            var fit = ResponseModel.Fit(data, new() { DriftSdLogits = 0 });
            var (held, square) = (0.0, 0.0);
            for (var i = 0; i < 30; i++)
            {
                var chances = fit.Chances(i, [.. Enumerable.Range(0, 20)], 0);
                for (var j = 0; j < 20; j++)
                {
                    if (chances[j]!.WithinFraction(0, truth[i, j]) is > 0.05 and < 0.95) held += 1 / 600.0;
                    square += Math.Pow(chances[j]!.ChanceFraction - truth[i, j], 2) / 600;
                }
            }
            found[number] = (held, square, fit.Coefficients.Single(c => c.Kind == CoefficientKind.DoseSlope).Value.MeanLogits, fit.Cautions.HasFlag(ResponseCaution.ChoiceMattered) ? 1 : 0);
        });
        Console.WriteLine($"{way,-20}{(hasOrderAndPrediction ? "order, prediction" : "neither"),-20}held {found.Average(f => f.Held):0.000}   error {Math.Sqrt(found.Average(f => f.Square)):0.000}   "
            + $"slope {found.Average(f => f.Slope):0.00}   choice mattered {found.Average(f => f.Far):0.00}");
    }

    private static double Place(Estimate estimate, double truth) => Normal.CDF(estimate.MeanLogits, estimate.SdLogits, truth);

    private static double Place((double Mean, double Sd) estimate, double truth) => Normal.CDF(estimate.Mean, estimate.Sd, truth);

    private static double Held(double[][] places, int quantity) => places.Average(p => p[quantity] is > 0.05 and < 0.95 ? 1.0 : 0);

    private static double ChiSquare(double[][] places, int quantity)
    {
        var counts = new int[20];
        foreach (var place in places) counts[Math.Min(19, (int)(place[quantity] * 20))]++;
        var expected = places.Length / 20.0;
        return counts.Sum(c => (c - expected) * (c - expected) / expected);
    }
}
