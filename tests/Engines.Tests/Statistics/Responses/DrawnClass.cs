using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>A class drawn from what the model assumes: 30 pupils, 10 levels, 6 trials each at levels chosen at random. Also for the long study beside the benchmarks.</summary>
internal sealed record DrawnClass(double[][] Abilities, double Growth, double[] Difficulties, double Slope)
{
    public double Ability(int pupil, int lesson) => Abilities[pupil][lesson] + Growth * lesson;

    public static (ResponseData Data, DrawnClass Truth) Draw(Random random, ResponseOptions options, bool isTimed)
    {
        double Gauss() => Normal.Sample(random, 0, 1);
        var priors = options.Priors;
        var abilitySd = options.AbilitySdLogits ?? priors.Ability!.Value.MedianLogits * Math.Exp(priors.Ability.Value.LogSd * Gauss());
        var residualSd = options.ResidualSdLogits ?? priors.Residual!.Value.MedianLogits * Math.Exp(priors.Residual.Value.LogSd * Gauss());
        double[] doses = [2, 3, 5, 8, 13];
        var levels = Enumerable.Range(0, 10).Select(j => new ResponseLevel(j / 5, LevelDose.Hold(doses[j % 5]))).ToArray();
        var slope = priors.DoseSlope.MeanLogits + priors.DoseSlope.SdLogits * Gauss();
        // For timed holds the assumed density is the normal one times the slope: draws are kept in proportion to it.
        while (isTimed && !(slope > 0 && random.NextDouble() < slope / 4)) slope = priors.DoseSlope.MeanLogits + priors.DoseSlope.SdLogits * Gauss();
        var middle = priors.Middle.MeanLogits + priors.Middle.SdLogits * Gauss();
        double[] tasks = [Gauss(), Gauss()];
        var share = priors.TaskShareFraction;
        var difficulties = levels.Select(l => middle + slope * l.Dose!.Value.HardnessLogits + residualSd * (Math.Sqrt(share) * tasks[l.Task] + Math.Sqrt(1 - share) * Gauss())).ToArray();
        var growth = isTimed ? priors.Growth.MeanLogits + priors.Growth.SdLogits * Gauss() : 0;
        var abilities = Enumerable.Range(0, 30).Select(_ =>
        {
            var walk = new double[5];
            for (var l = 0; l < 5; l++) walk[l] = l == 0 ? abilitySd * Gauss() : walk[l - 1] + options.DriftSdLogits * Gauss();
            return walk;
        }).ToArray();
        var truth = new DrawnClass(abilities, growth, difficulties, slope);

        var trials = new List<ResponseTrial>();
        for (var i = 0; i < 30; i++)
        {
            for (var k = 0; k < 6; k++)
            {
                var (level, lesson) = (random.Next(10), isTimed ? k / 2 : 0);
                var u = random.NextDouble();
                var eta = truth.Ability(i, lesson) - difficulties[level];
                var isHeld = u < 1 / (1 + Math.Exp(-eta));
                // How long it lasted: the time at which the chance of lasting falls to u.
                var held = doses[level % 5] * Math.Exp((eta - Math.Log(u / (1 - u))) / slope);
                trials.Add(ResponseTrial.Single(i, level, lesson, isHeld, isTimed && !isHeld && random.Next(2) == 0 ? Math.Round(held, 1) : null));
            }
        }
        return (new([.. Enumerable.Range(0, 30).Select(_ => new ResponsePupil())], levels, trials), truth);
    }
}
