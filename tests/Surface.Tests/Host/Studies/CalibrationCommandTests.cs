namespace Slantwise.Surface.Tests.Host.Studies;

/// <summary>Predictions on the command line.</summary>
public sealed class CalibrationCommandTests
{
    // Source: [Wilks2006] table 7.3, chances of rain, how often each was used (two uses are mistyped in the help of R's verification) and how often it rained.
    private const string Wilks = """
        predicted,trials,outcome
        0,4112000,0.006
        0.05,671000,0.019
        0.1,1833000,0.059
        0.2,986000,0.150
        0.3,616000,0.277
        0.4,366000,0.377
        0.5,303000,0.511
        0.6,275000,0.587
        0.7,245000,0.723
        0.8,220000,0.779
        0.9,170000,0.934
        1,203000,0.933
        """;

    // By hand: five single trials.
    private const string Five = "predicted,outcome\n0.9,1\n0.8,1\n0.6,0\n0.5,1\n0.3,0\n";

    [Fact]
    public async Task Calibration_OfWilksTable_HasHisParts()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("calibration", folder.Write("w.csv", Wilks));
        // R 4.2.2, sums as Murphy defines them: sum(pr * (y - ob)^2) and so on.
        var parts = answer["parts"]!;
        Assert.Equal([0.000827616, 0.062786628, 0.135420052, 0.073461040], new[] { "reliabilityFraction", "resolutionFraction", "uncertaintyFraction", "brierFraction" }.Select(k => parts[k].Number()), StudyRun.Within(1e-9));
        Assert.Equal(0.457532034, answer["scores"]!["skillFraction"].Number(), 1e-9);
        Assert.Equal(0.1615034, answer["scores"]!["baseRateFraction"].Number(), 1e-9);
        Assert.Equal(10_000_000, answer["scores"]!["trialCount"].Number());
        // .9 and 1 rained alike often: the rising curve takes them as one.
        Assert.Equal(11, answer["curve"]!["blocks"]!.AsArray().Count);
        Assert.Null(answer["scores"]!["logLossNats"]);
        Assert.Contains("certainAndWrong", answer["scores"]!["cautions"]!.AsArray().Select(c => c!.GetValue<string>()));
    }

    [Fact]
    public async Task Calibration_OfFiveTrials_IsAsByHand()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("calibration", folder.Write("f.csv", Five));
        var scores = answer["scores"]!;
        // (.01 + .04 + .36 + .25 + .09) / 5, 3.1/5 − 3/5, (.1 + .2 + .6 + .5 + .3) / 5, and 1 − .15/.24.
        Assert.Equal([0.15, 0.02, 0.34, 0.375], new[] { "brierFraction", "biasFraction", "absoluteErrorFraction", "skillFraction" }.Select(k => scores[k].Number()), StudyRun.Within(1e-12));
        Assert.Equal(-(Math.Log(0.9) + Math.Log(0.8) + Math.Log(0.4) + Math.Log(0.5) + Math.Log(0.7)) / 5, scores["logLossNats"].Number(), 1e-12);
        // Of 3 · 2 pairs only .5 against .6 is reversed.
        Assert.Equal((5, 1), ((int)answer["gamma"]!["orderedCount"]!, (int)answer["gamma"]!["reversedCount"]!));
        var curve = answer["curve"]!;
        Assert.Equal(0.15, curve["miscalibrationFraction"].Number() - curve["discriminationFraction"].Number() + curve["uncertaintyFraction"].Number(), 1e-12);
    }

    [Fact]
    public async Task Calibration_ByRanges_HasFivePartsThatSumToTheScore()
    {
        using var folder = new TempFolder();
        var parts = (await StudyRun.JsonAsync("calibration", folder.Write("f.csv", Five), "--ranges", "2"))["parts"]!;
        Assert.Equal("range", parts["by"]!.GetValue<string>());
        Assert.Equal(2, parts["groups"]!.AsArray().Count);
        double Part(string name) => parts[name + "Fraction"].Number();
        Assert.Equal(0.15, Part("reliability") - Part("resolution") + Part("uncertainty") + Part("withinVariance") - Part("withinCovariance"), 1e-12);
        Assert.True(Part("withinVariance") > 0);
    }

    [Fact]
    public async Task Calibration_BySharesAndByCounts_IsTheSame()
    {
        using var folder = new TempFolder();
        var shares = await StudyRun.JsonAsync("calibration", folder.Write("s.csv", "predicted,trials,outcome\n0.8,3,0.667\n0.4,8,0.125\n"));
        var counts = await StudyRun.JsonAsync("calibration", folder.Write("c.csv", "predicted,trials,successes\n0.8,3,2\n0.4,8,1\n"));
        Assert.Equal(counts.ToJsonString(), shares.ToJsonString());
    }

    [Fact]
    public async Task Calibration_WithPupilsAndGroups_ScoresEachWithItsN()
    {
        using var folder = new TempFolder();
        var file = folder.Write("g.csv", "predicted,outcome,pupil,group\n0.9,1,Ana,before\n0.7,0,Ana,after\n0.5,1,Bo,after\n");
        var answer = await StudyRun.JsonAsync("calibration", file);
        Assert.Equal(2, answer["pupils"].Named("pupil", "Ana")["scores"]!["trialCount"].Number());
        Assert.Equal(0.3, answer["pupils"].Named("pupil", "Ana")["scores"]!["biasFraction"].Number(), 1e-12);
        Assert.Equal(-0.5, answer["pupils"].Named("pupil", "Bo")["scores"]!["biasFraction"].Number(), 1e-12);
        Assert.Equal(0.1, answer["groups"].Named("group", "after")["scores"]!["biasFraction"].Number(), 1e-12);
        var run = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "calibration", file);
        Assert.Matches(@"\n  Ana +2 +0,300", run.Output);
        Assert.Contains("Menos de 10 intentos", run.Output);
    }

    [Fact]
    public async Task Calibration_WhereAllEndedAlike_SaysUndefinedAsUndefined()
    {
        using var folder = new TempFolder();
        var file = folder.Write("a.csv", "predicted,outcome\n0.9,1\n0.4,1\n");
        Assert.Null((await StudyRun.JsonAsync("calibration", file))["scores"]!["skillFraction"]);
        Assert.Contains("skill is not defined", (await HostProgram.RunAsync("calibration", file)).Output);
    }

    [Theory]
    [InlineData("predicted,outcome\n1.2,1\n", "line 2, column “predicted”: “1.2” is not possible here. Possible: a number from 0 to 1.")]
    [InlineData("predicted,outcome\n0.5,0.4\n", "line 2, column “outcome”: “0.4” is not possible here. Possible: 1 or 0")]
    [InlineData("predicted,outcome,trials\n0.5,0.4,4\n", "“0.4” is not possible here. Possible: the share of 4 trials")]
    [InlineData("predicted,successes,trials\n0.5,5,4\n", "“5” is not possible here. Possible: a whole number from 0 to 4.")]
    [InlineData("predicted,successes\n0.5,1\n", "there is no column “trials”")]
    [InlineData("outcome\n1\n", "there is no column “predicted”")]
    public async Task Calibration_OfATableThatCannotBe_SaysWhy(string text, string said)
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("calibration", folder.Write("c.csv", text));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Error);
    }
}
