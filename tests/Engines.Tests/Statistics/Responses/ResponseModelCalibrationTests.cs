using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>
/// Whether ranges hold as often as they say. Everything is drawn from what the model assumes, fitted, and looked up in its own posterior: over many classes the
/// places found must be spread evenly. Source: [Talts2018]. Seeded, so that each of these either always passes or never does.
/// </summary>
public sealed class ResponseModelCalibrationTests
{
    // Chi-square with 19 degrees of freedom exceeds this once in a thousand.
    private const double Limit = 43.8;

    private static readonly ResponseOptions Ticks = new()
    {
        DriftSdLogits = 0, ChoicePupilCount = 0,
        Priors = new() { Middle = new(0, 1), DoseSlope = new(1, 0.5), OwnSlopeSdLogits = 0, TaskShareFraction = 0 },
    };

    [Fact]
    public void Fit_ClassesDrawnFromItsAssumptions_HasEvenPlaces()
    {
        var places = Draws(500, 1, Ticks, false, (data, truth) =>
        {
            var fit = ResponseModel.Fit(data, Ticks);
            return [Place(fit.Ability(3, 0), truth.Ability(3, 0)), Place(fit.Difficulty(2)!.Value, truth.Difficulties[2]),
                fit.Chance(5, 7, 0)!.WithinFraction(0, 1 / (1 + Math.Exp(truth.Difficulties[7] - truth.Ability(5, 0)))), Place(fit.Coefficients[1].Value, truth.Slope)];
        });
        for (var k = 0; k < 4; k++) Assert.True(ChiSquare(places, k) < Limit, $"quantity {k}: {ChiSquare(places, k)}");
    }

    [Fact]
    public void JointMode_ClassesDrawnFromTheSame_HasNot()
    {
        // Seen: 74 and 54 against 12 to 25 for the fits here. The test above is known to bite: the shortcut that it is there to refuse is refused by it.
        var places = Draws(400, 1, Ticks, false, (data, truth) =>
        {
            var joint = new JointMode(data, Ticks.Priors, 1.2, 0.5).Estimated();
            return [Place(joint.Eta(5, 7, 0), truth.Ability(5, 0) - truth.Difficulties[7]), Place(joint.Value(1), truth.Slope)];
        });
        Assert.True(ChiSquare(places, 0) > Limit, $"{ChiSquare(places, 0)}");
        Assert.True(ChiSquare(places, 1) > Limit, $"{ChiSquare(places, 1)}");
    }

    [Fact]
    public void Fit_DriftAndTimesDrawnFromItsAssumptions_HasEvenPlaces()
    {
        // Spreads known, so that one search is enough; three lessons, drift .3, half of the failures timed, the slope as it is assumed for timed holds.
        var options = Ticks with { DriftSdLogits = 0.3, AbilitySdLogits = 1.2, ResidualSdLogits = 0.5, Priors = Ticks.Priors with { TaskShareFraction = 0.5 } };
        var places = Draws(400, 2, options, true, (data, truth) =>
        {
            var fit = ResponseModel.Fit(data, options);
            return [Place(fit.Ability(3, 2), truth.Ability(3, 2)), Place(fit.Difficulty(2)!.Value, truth.Difficulties[2]),
                fit.Chance(5, 7, 4)!.WithinFraction(0, 1 / (1 + Math.Exp(truth.Difficulties[7] - truth.Ability(5, 4)))), Place(fit.Coefficients[1].Value, truth.Slope)];
        });
        for (var k = 0; k < 4; k++) Assert.True(ChiSquare(places, k) < Limit, $"quantity {k}: {ChiSquare(places, k)}");
    }

    /// <summary>Classes of 30 with 6 trials each on 10 levels chosen at random, each drawn anew; what is looked up in each.</summary>
    private static double[][] Draws(int count, int seed, ResponseOptions options, bool isTimed, Func<ResponseData, DrawnClass, double[]> look)
    {
        var places = new double[count][];
        Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 4 }, draw =>
        {
            var (data, truth) = DrawnClass.Draw(new Random(1000 * seed + draw), options, isTimed);
            places[draw] = look(data, truth);
        });
        return places;
    }

    private static double Place(Estimate estimate, double truth) => Normal.CDF(estimate.MeanLogits, estimate.SdLogits, truth);

    private static double Place((double Mean, double Sd) estimate, double truth) => Normal.CDF(estimate.Mean, estimate.Sd, truth);

    private static double ChiSquare(double[][] places, int quantity)
    {
        var counts = new int[20];
        foreach (var place in places) counts[Math.Min(19, (int)(place[quantity] * 20))]++;
        var expected = places.Length / 20.0;
        return counts.Sum(c => (c - expected) * (c - expected) / expected);
    }
}
