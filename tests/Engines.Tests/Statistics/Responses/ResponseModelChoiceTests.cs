using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Classes whose pupils choose their own levels, the case this tool exists for. Seeded.</summary>
public sealed class ResponseModelChoiceTests
{
    private const int ClassCount = 40;

    [Theory]
    [InlineData(WayOfChoosing.ByPrivateKnowledge)]
    [InlineData(WayOfChoosing.ByPastOutcomes)]
    [InlineData(WayOfChoosing.AtRandom)]
    public void Chance_ChosenWithOrderAndPrediction_CoversWhatItSays(WayOfChoosing way)
    {
        var (covered, error) = Study(way, true);
        Assert.InRange(covered, 0.87, 0.93);
        Assert.True(error < 0.14, $"{error}");
    }

    [Fact]
    public void Chance_SelfChosenWithNeither_DoesNot()
    {
        // What the order and the prediction before the first trial are for. Levels look more alike than they are, and ranges miss.
        var (covered, error) = Study(WayOfChoosing.ByPrivateKnowledge, false);
        Assert.True(covered < 0.8, $"{covered}");
        Assert.True(error > 0.15, $"{error}");
    }

    /// <summary>How many of the 90 % ranges of all pupils at all levels hold, and the root mean square error of the chance.</summary>
    private static (double CoveredFraction, double Error) Study(WayOfChoosing way, bool hasOrderAndPrediction)
    {
        var (covered, square) = (new double[ClassCount], new double[ClassCount]);
        Parallel.For(0, ClassCount, new ParallelOptions { MaxDegreeOfParallelism = 4 }, number =>
        {
            var (data, truth) = ChosenClass.Draw(new Random(31 + number), way, hasOrderAndPrediction);
            var fit = ResponseModel.Fit(data, new() { DriftSdLogits = 0, ChoicePupilCount = 0 });
            for (var i = 0; i < 30; i++)
            {
                var chances = fit.Chances(i, [.. Enumerable.Range(0, 20)], 0);
                for (var j = 0; j < 20; j++)
                {
                    // The truth lies in the 90 % range where between 5 and 95 % of the posterior lie below it.
                    if (chances[j]!.WithinFraction(0, truth[i, j]) is > 0.05 and < 0.95) covered[number] += 1 / 600.0;
                    square[number] += Math.Pow(chances[j]!.ChanceFraction - truth[i, j], 2) / 600;
                }
            }
        });
        return (covered.Average(), Math.Sqrt(square.Average()));
    }
}
