using System.Text;
using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host.Studies;

/// <summary>The response model on the command line against other programs.</summary>
public sealed class FitCommandTests
{
    // Sources: [BockLieberman1970] for the data; [Lme42015] under R 4.2.2, glmer(y ~ 0 + item + (1 | id), nAGQ = 25), whose .7551343 and the 61 points of base R agree
    // to 4e-7 with Newton's method on a sum over 301 points, .75513462: a search stops where a peak is flat.
    [Theory]
    [InlineData(6, 0.755135, -2466.937600, new[] { -2.730013, -0.998606, -0.239854, -1.306451, -2.099404 })]
    [InlineData(7, 1.011267, -2664.900891, new[] { -1.868265, -0.791006, -1.460980, -0.521506, -1.992975 })]
    public async Task Fit_FlatOnLsat_IsTheMaximumMarginalLikelihoodFit(int section, double sd, double logLikelihood, double[] difficulties)
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("fit", "--trials", Lsat(folder, section), "--priors", "flat");
        Assert.Equal(5000, answer["trialCount"].Number());
        Assert.Equal(sd, answer["abilitySpread"]!["medianLogits"].Number(), 2e-6);
        Assert.Equal(logLikelihood, answer["logLikelihoodNats"].Number(), 1e-5);
        Assert.Equal(difficulties, answer["levels"]!.AsArray().Select(l => l!["difficulty"]!["meanLogits"].Number()), StudyRun.Within(1e-5));
        Assert.Null(answer["evidenceNats"]);
    }

    [Fact]
    public async Task Fit_FlatOnLsat6_HasTheStandardErrorsOfTheObservedInformation()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("fit", "--trials", Lsat(folder, 6), "--priors", "flat");
        // Source: [Lme42015] and base R, as above: .13043 and .06943 from the curvature of the likelihood.
        Assert.Equal(0.13043, answer["levels"]![0]!["difficulty"]!["sdLogits"].Number(), 1e-4);
        Assert.Equal(0.06943, answer["abilitySpread"]!["sdLogits"].Number(), 1e-4);
    }

    [Fact]
    public async Task Fit_FiveNodes_ComeOutAsFiveNodesDo()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("fit", "--trials", Lsat(folder, 6), "--priors", "flat", "--nodes", "5");
        // Source: [Lme42015]; five points are known to miss .755135 by a little. The option would be a sham if they did not.
        Assert.Equal(0.75527, answer["abilitySpread"]!["medianLogits"].Number(), 1e-4);
        Assert.True(Math.Abs(answer["abilitySpread"]!["medianLogits"].Number() - 0.755135) > 2e-5);
    }

    [Fact]
    public async Task Fit_ConditionalOnLsat6_IsTheOneOfOtherPrograms()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("fit", "--trials", Lsat(folder, 6), "--priors", "flat", "--conditional");
        // Source: [Mair2007] eRm 1.0.2 and psychotools 0.7.2 under R 4.2.2, sum zero.
        Assert.Equal([-1.256128, 0.474906, 1.235984, 0.168411, -0.623172], answer["levels"]!.AsArray().Select(l => l!["conditionalDifficulty"]!["meanLogits"].Number()), StudyRun.Within(1e-5));
        Assert.Equal([0.104410, 0.069917, 0.068778, 0.072619, 0.085917], answer["levels"]!.AsArray().Select(l => l!["conditionalDifficulty"]!["sdLogits"].Number()), StudyRun.Within(1e-5));
        Assert.Equal(-1091.569690, answer["conditional"]!["logLikelihoodNats"].Number(), 1e-5);
    }

    [Fact]
    public async Task Fit_StandardOnAClass_AgreesWithSampling()
    {
        var stan = StudyRun.Rows("class_stan_posterior.csv").ToDictionary(r => r[0], r => (Mean: StudyRun.Read(r[1]), Sd: StudyRun.Read(r[3])));
        var answer = await StudyRun.JsonAsync("fit", "--trials", StudyRun.Data("class.csv"), "--drift", "0", "--at", "0");
        Assert.Equal((30, 12, 450), ((int)answer["pupilCount"]!, (int)answer["levelCount"]!, (int)answer["trialCount"]!));
        // Source: [Stan2017], rstan 2.21.7. The sampled model has normal(0, 3) where the standard assumptions have normal(1, 1.12) for the slope, worth .04 of its
        // standard deviation in the middle and .05 in width; the rest is the sampler's error and the mode for the mean of a skewed posterior.
        Assert.Equal(stan["lsig"].Mean, Math.Log(answer["abilitySpread"]!["medianLogits"].Number()), 0.02);
        Assert.Equal(stan["lome"].Mean, Math.Log(answer["residualSpread"]!["medianLogits"].Number()), 0.02);
        foreach (var pupil in answer["pupils"]!.AsArray()) Close(stan[$"theta[{pupil!["pupil"]}]"], pupil["ability"]!, 0.1, 0.95, 1.03);
        foreach (var level in answer["levels"]!.AsArray()) Close(stan[$"b[{level!["level"]}]"], level["difficulty"]!, 0.15, 0.92, 1.03);
        Close(stan["phi"], answer["coefficients"].Named("kind", "growth")["estimate"]!, 0.1, 0.95, 1.03);
        Close(stan["k1"], answer["coefficients"].Named("of", "hold")["estimate"]!, 0.1, 0.92, 1.03);
    }

    [Fact]
    public async Task Fit_WithChances_GivesThoseOfSampling()
    {
        var stan = StudyRun.Rows("class_stan_posterior.csv").ToDictionary(r => r[0]);
        var answer = await StudyRun.JsonAsync("fit", "--trials", StudyRun.Data("class.csv"), "--drift", "0", "--at", "5", "--chances");
        foreach (var (pupil, level) in new[] { ("1", "7"), ("30", "1") })
        {
            var chance = answer["pupils"].Named("pupil", pupil)["chances"].Named("level", level);
            Assert.Equal(StudyRun.Read(stan[$"p_{pupil}_{level}_5"][1]), chance["chanceFraction"].Number(), 0.006);
            Assert.Equal(StudyRun.Read(stan[$"p_{pupil}_{level}_5"][4]), chance["lowFraction"].Number(), 0.012);
            Assert.Equal(StudyRun.Read(stan[$"p_{pupil}_{level}_5"][8]), chance["highFraction"].Number(), 0.012);
        }
    }

    [Fact]
    public async Task Fit_FixedScales_AreThoseGiven()
    {
        var answer = await StudyRun.JsonAsync("fit", "--trials", StudyRun.Data("class.csv"), "--scales", "fixed", "--ability-sd", "0.9", "--drift", "0");
        Assert.Equal((0.9, 0.0), (answer["abilitySpread"]!["medianLogits"].Number(), answer["abilitySpread"]!["logSd"].Number()));
        Assert.Equal((0.5, 0.0), (answer["residualSpread"]!["medianLogits"].Number(), answer["residualSpread"]!["logSd"].Number()));
    }

    [Fact]
    public async Task Fit_InWords_SaysNAndDataShareOfEveryNumber()
    {
        var run = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "fit", "--trials", StudyRun.Data("class.csv"));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("450 intentos de 30 alumnos en 12 niveles", run.Output);
        Assert.Contains("sobre todo supuesto", run.Output);
        Assert.Matches(@"Nivel +Intentos +Con éxito +Dificultad", run.Output);
        // Pupil 28 never succeeded; the number is finite and its doubt is said.
        Assert.Matches(@"\n  28 +15 +0 +-\d,\d{3} +\d,\d{3} +\d,\d{2}", run.Output);
    }

    private static void Close((double Mean, double Sd) sampled, JsonNode estimate, double gapInSd, double lowRatio, double highRatio)
    {
        Assert.Equal(0, (estimate["meanLogits"].Number() - sampled.Mean) / sampled.Sd, gapInSd);
        Assert.InRange(estimate["sdLogits"].Number() / sampled.Sd, lowRatio, highRatio);
    }

    private static string Lsat(TempFolder folder, int section)
    {
        var text = new StringBuilder("pupil,level,success\n");
        var person = 0;
        foreach (var row in StudyRun.Rows("lsat6_lsat7_patterns.csv"))
        {
            for (var n = int.Parse(row[section == 6 ? 6 : 7], null); n > 0; n--, person++)
                for (var q = 1; q <= 5; q++) text.Append(null, $"{person},Q{q},{row[q]}\n");
        }
        return folder.Write("lsat.csv", text.ToString());
    }
}
