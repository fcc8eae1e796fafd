using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host.Studies;

/// <summary>Times on the command line against R's survival 3.5.3 under R 4.2.2. Source: [Therneau2023].</summary>
public sealed class SurvivalCommandTests
{
    [Fact]
    public async Task Survival_OfTheLeukaemiaTrial_IsThatOfR()
    {
        var answer = await StudyRun.JsonAsync("survival", StudyRun.Data("gehan.csv"), "--limit", "35");
        // survfit(Surv(time, cens) ~ treat, gehan, conf.type = "log-log").
        var (drug, control) = (answer["groups"].Named("group", "6-MP"), answer["groups"].Named("group", "control"));
        var (ten, end) = (Step(drug, 10), Step(drug, 23));
        Assert.Equal([0.752941176, 0.096349653, 0.503200, 0.889362], Figures(ten), StudyRun.Within(1e-6));
        Assert.Equal([0.448179272, 0.134591457], Figures(end)[..2], StudyRun.Within(1e-9));
        Assert.Equal((23, 13), ((double)drug["median"]!["medianS"]!, (double)drug["median"]!["lowS"]!));
        Assert.Null(drug["median"]!["highS"]);
        Assert.Equal([8, 4, 11], new[] { "medianS", "lowS", "highS" }.Select(k => control["median"]![k].Number()));
        Assert.Equal([23.287395, 8.666667], new[] { drug, control }.Select(g => g["meanToLimitS"].Number()), StudyRun.Within(1e-6));
        Assert.Equal((21, 9), ((int)drug["holdCount"]!, (int)drug["fallenCount"]!));
        // survdiff(Surv(time, cens) ~ treat, gehan).
        Assert.Equal(16.792941, answer["logRank"]!["chiSquareSd2"].Number(), 1e-6);
        Assert.Equal(4.168809e-05, answer["logRank"]!["chanceFraction"].Number(), 1e-10);
    }

    // survreg(Surv(time, cens) ~ treat, gehan, dist = ...); the control group stands first in the table, so the difference is turned round.
    [Theory]
    [InlineData("weibull", 3.515687, 0.251781, -1.267335, 0.310640, 0.732194, 0.147292, -106.579492)]
    [InlineData("logLogistic", 3.158154, 0.248363, -1.265463, 0.325661, 0.546553, null, -107.661417)]
    public async Task Survival_LawsOfTheLeukaemiaTrial_AreThoseOfR(
        string law, double drug, double drugError, double control, double controlError, double spread, double? logSpreadError, double logLikelihood)
    {
        var fitted = (await StudyRun.JsonAsync("survival", StudyRun.Data("gehan.csv")))["laws"].Named("law", law);
        var group = fitted["groups"].Named("group", "6-MP");
        Assert.Equal([drug, drugError], Scale(group["logScale"]!), StudyRun.Within(1e-5));
        Assert.Equal([-control, controlError], Scale(group["difference"]!), StudyRun.Within(1e-5));
        Assert.Equal(spread, fitted["spreadNats"].Number(), 1e-5);
        Assert.Equal(logLikelihood, fitted["logLikelihoodNats"].Number(), 1e-5);
        if (logSpreadError is { } error) Assert.Equal(error, fitted["logSpreadErrorNats"].Number(), 1e-5);
    }

    [Fact]
    public async Task Survival_OfMaintenance_IsThatOfR()
    {
        var answer = await StudyRun.JsonAsync("survival", StudyRun.Data("aml.csv"));
        var maintained = answer["groups"].Named("group", "Maintained");
        Assert.Equal(0.184090909, Step(maintained, 48)["heldFraction"].Number(), 1e-9);
        Assert.Equal(31, maintained["median"]!["medianS"].Number());
        Assert.Equal(3.396389, answer["logRank"]!["chiSquareSd2"].Number(), 1e-6);
    }

    [Fact]
    public async Task Survival_OfTheHandbooksLamps_IsTheHandbooksWeibull()
    {
        using var folder = new TempFolder();
        // NIST/SEMATECH handbook 8.4.1.3: ten of twenty ran to the end at 500 h; R's survreg for the digits.
        var times = "54 187 216 240 244 335 361 373 375 386".Split(' ').Select(t => $"{t},1").Concat(Enumerable.Repeat("500,0", 10));
        var answer = await StudyRun.JsonAsync("survival", folder.Write("t.csv", "time,event\n" + string.Join('\n', times)));
        var fitted = answer["laws"].Named("law", "weibull");
        Assert.Equal(606.527558, Math.Exp(fitted["groups"]![0]!["logScale"]!["valueNats"].Number()), 1e-4);
        Assert.Equal(1.720797, 1 / fitted["spreadNats"].Number(), 1e-6);
        Assert.Equal(-75.134618, fitted["logLikelihoodNats"].Number(), 1e-6);
        Assert.Equal([0.205944, 0.291813], [fitted["groups"]![0]!["logScale"]!["errorNats"].Number(), fitted["logSpreadErrorNats"].Number()], StudyRun.Within(1e-6));
        Assert.Null(answer["logRank"]);
    }

    [Fact]
    public async Task Survival_OfRoundedTimes_DependsOnTheRounding()
    {
        using var folder = new TempFolder();
        var file = folder.Write("t.csv", "time,event\n1,1\n2,1\n2,1\n3,1\n5,0\n");
        var exact = (await StudyRun.JsonAsync("survival", file))["laws"].Named("law", "logLogistic");
        var rounded = (await StudyRun.JsonAsync("survival", file, "--resolution", "0.001"))["laws"].Named("law", "logLogistic");
        // By hand: the chance of an interval is its density times its width, so four log likelihoods differ by log(0.001), and the curve by next to nothing.
        Assert.Equal(exact["logLikelihoodNats"].Number() + 4 * Math.Log(0.001), rounded["logLikelihoodNats"].Number(), 1e-5);
        Assert.Equal(exact["spreadNats"].Number(), rounded["spreadNats"].Number(), 1e-6);
    }

    [Fact]
    public async Task Survival_WhereNothingEnded_SaysUndefinedAsUndefined()
    {
        using var folder = new TempFolder();
        var file = folder.Write("t.csv", "time,event,group\n5,0,a\n5,0,b\n");
        var answer = await StudyRun.JsonAsync("survival", file);
        Assert.All(answer["laws"]!.AsArray(), l => Assert.False(l!["isDefined"]!.GetValue<bool>()));
        Assert.Null(answer["logRank"]!["chiSquareSd2"]);
        Assert.Null(answer["groups"]![0]!["median"]!["medianS"]);
        var run = await HostProgram.RunAsync("survival", file);
        Assert.Contains("Log-rank test: not defined", run.Output);
        Assert.Contains("more than half were still there at the end", run.Output);
        Assert.Contains("no curve can be fitted", run.Output);
    }

    [Fact]
    public async Task Survival_OfPupilsWithSeveralTimes_TakesErrorsOverPupils()
    {
        using var folder = new TempFolder();
        var rows = Enumerable.Range(0, 24).Select(i => $"p{i / 3},{3 + i * 7 % 11},1");
        var answer = await StudyRun.JsonAsync("survival", folder.Write("t.csv", "pupil,time,event\n" + string.Join('\n', rows)));
        Assert.True(answer["groups"]![0]!["isByPupil"]!.GetValue<bool>());
        Assert.Equal((24, 8), ((int)answer["groups"]![0]!["holdCount"]!, (int)answer["groups"]![0]!["pupilCount"]!));
    }

    [Theory]
    [InlineData("time,event\n0,1\n", "line 2, column “time”: “0” is not possible here. Possible: a number above 0.")]
    [InlineData("time,event\n3,2\n", "line 2, column “event”: “2” is not possible here. Possible: 1 or 0")]
    [InlineData("time,event,group\n3,1,\n", "line 2, column “group”: the field is empty")]
    [InlineData("time\n3\n", "there is no column “event”")]
    [InlineData("time,event\n\"1,5\",1\n", "“1,5” is not possible here")]
    public async Task Survival_OfATableThatCannotBe_SaysWhy(string text, string said)
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("survival", folder.Write("t.csv", text));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Error);
    }

    private static JsonNode Step(JsonNode group, double time) => group["steps"]!.AsArray().Single(s => s!["timeS"].Number() == time)!;

    private static double[] Figures(JsonNode step) => [.. new[] { "heldFraction", "errorFraction", "lowFraction", "highFraction" }.Select(k => step[k].Number())];

    private static double[] Scale(JsonNode scale) => [scale["valueNats"].Number(), scale["errorNats"].Number()];
}
