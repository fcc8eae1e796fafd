using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Classes of 30 pupils with 12 trials each on 20 levels of four tasks, true slope 0.9, abilities N(0, 1.2²). Also for the long study beside the benchmarks.</summary>
internal static class ChosenClass
{
    /// <summary>Trials, and the true chance of each pupil at each level.</summary>
    public static (ResponseData Data, double[,] Truth) Draw(Random random, WayOfChoosing way, bool hasOrderAndPrediction)
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
            var reached = 0.0;
            int Choose()
            {
                if (way == WayOfChoosing.AtRandom) return random.Next(20);
                var wish = (way == WayOfChoosing.ByPrivateKnowledge ? belief : reached) - 0.6 + Gauss();
                return Enumerable.Range(0, 20).MinBy(j => Math.Abs(shown[j] - wish));
            }
            var first = Choose();
            var expected = 1 / (1 + Math.Exp(shown[first] - belief - 0.4 * Gauss()));
            pupils.Add(new(hasOrderAndPrediction ? new FirstPrediction(first, Math.Round(expected, 1)) : null));
            for (var k = 0; k < 12; k++)
            {
                var level = k == 0 ? first : Choose();
                var hasSucceeded = random.NextDouble() < truth[i, level];
                reached += hasSucceeded ? 0.4 : -0.4;
                trials.Add(ResponseTrial.Single(i, level, 0, hasSucceeded));
            }
        }
        return (new(pupils, levels, trials), truth);
    }
}
