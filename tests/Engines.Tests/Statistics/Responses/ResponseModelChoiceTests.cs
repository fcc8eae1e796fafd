using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Classes whose pupils choose their own levels by what they privately know of themselves: the case this tool exists for. Seeded.</summary>
public sealed class ResponseModelChoiceTests
{
    private const int ClassCount = 40;

    [Fact]
    public void Chance_SelfChosenWithOrderAndPrediction_CoversWhatItSays()
    {
        var (covered, error) = Study(hasOrderAndPrediction: true);
        Assert.InRange(covered, 0.87, 0.93);
        Assert.True(error < 0.14, $"{error}");
    }

    [Fact]
    public void Chance_SelfChosenWithNeither_DoesNot()
    {
        // What the order and the prediction before the first trial are for. Levels look more alike than they are, and ranges miss.
        var (covered, error) = Study(hasOrderAndPrediction: false);
        Assert.True(covered < 0.8, $"{covered}");
        Assert.True(error > 0.15, $"{error}");
    }

    /// <summary>How many of the 90 % ranges of all pupils at all levels hold, and the root mean square error of the chance.</summary>
    private static (double CoveredFraction, double Error) Study(bool hasOrderAndPrediction)
    {
        var (covered, square) = (new double[ClassCount], new double[ClassCount]);
        Parallel.For(0, ClassCount, new ParallelOptions { MaxDegreeOfParallelism = 4 }, number =>
        {
            var (data, truth) = SelfChosen(new Random(31 + number), hasOrderAndPrediction);
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

    private static (ResponseData Data, double[,] Truth) SelfChosen(Random random, bool hasOrderAndPrediction)
    {
        double Gauss() => Normal.Sample(random, 0, 1);
        double[] doses = [2, 4, 7, 12, 20];
        double[] tasks = [-1, -0.3, 0.4, 1.1];
        var shown = Enumerable.Range(0, 20).Select(j => tasks[j / 5] + 0.9 * Math.Log(doses[j % 5] / 5)).ToArray();
        var difficulties = shown.Select(s => s + 0.4 * Gauss()).ToArray();
        var order = OrderScores.Of([0, 1, 2, 3]);
        var levels = Enumerable.Range(0, 20).Select(j => new ResponseLevel(j / 5, LevelDose.Hold(doses[j % 5])) { OrderLogits = hasOrderAndPrediction ? order[j / 5] : null }).ToArray();
        var (pupils, trials, truth) = (new List<ResponsePupil>(), new List<ResponseTrial>(), new double[30, 20]);
        for (var i = 0; i < 30; i++)
        {
            var ability = 1.2 * Gauss();
            for (var j = 0; j < 20; j++) truth[i, j] = 1 / (1 + Math.Exp(difficulties[j] - ability));
            // A pupil has a fair idea of the own ability and looks for a level a little below it, by what a sheet shows.
            var belief = ability + 0.6 * Gauss();
            int Choose()
            {
                var wish = belief - 0.6 + Gauss();
                return Enumerable.Range(0, 20).MinBy(j => Math.Abs(shown[j] - wish));
            }
            var first = Choose();
            var expected = 1 / (1 + Math.Exp(shown[first] - belief - 0.4 * Gauss()));
            pupils.Add(new(hasOrderAndPrediction ? new FirstPrediction(first, Math.Round(expected, 1)) : null));
            for (var k = 0; k < 12; k++)
            {
                var level = k == 0 ? first : Choose();
                trials.Add(ResponseTrial.Single(i, level, 0, random.NextDouble() < truth[i, level]));
            }
        }
        return (new(pupils, levels, trials), truth);
    }
}
