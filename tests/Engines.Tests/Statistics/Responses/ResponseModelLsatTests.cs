using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>
/// Nothing assumed: maximum marginal likelihood on the law school test. Reference values: base R 4.2.2 with 61 Gauss-Hermite points, and lme4 1.1.31's
/// glmer with 25, which agree to 1e-6; tables and commands in data/. Sources: [BockLieberman1970] for the data; [Lme42015].
/// </summary>
public sealed class ResponseModelLsatTests
{
    private static readonly ResponseOptions Flat = new() { IsFlat = true, NodeCount = 15, ToleranceSd = 1e-11 };

    private static readonly Lazy<ResponseFit> Lsat6 = new(() => ResponseModel.Fit(Tables.Lsat(6), Flat));

    [Theory]
    [InlineData(6)]
    [InlineData(7)]
    public void Fit_LsatFlat_IsMaximumMarginalLikelihood(int section)
    {
        var table = Tables.Named($"rasch_mml_lsat{section}.csv");
        var fit = section == 6 ? Lsat6.Value : ResponseModel.Fit(Tables.Lsat(7), Flat);
        Assert.Equal(ResponseCaution.None, fit.Cautions);
        Assert.Equal(table["SD"][0], fit.AbilitySpread.MedianLogits, 2e-6);
        Assert.Equal(table["SD"][1], fit.AbilitySpread.SdLogits, 1e-4);
        for (var j = 0; j < 5; j++)
        {
            Assert.Equal(table[$"Q{j + 1}"][0], fit.Difficulty(j)!.Value.MeanLogits, 1e-5);
            Assert.Equal(table[$"Q{j + 1}"][1], fit.Difficulty(j)!.Value.SdLogits, 1e-4);
        }
    }

    [Fact]
    public void Fit_Lsat6_HasThePublishedLikelihood() =>
        // One-parameter log-likelihood −2466.938; difficulties over spread −3.615 −1.322 −0.318 −1.730 −2.780. Source: [Rizopoulos2006] (from memory; recomputed).
        Assert.Multiple(
            () => Assert.Equal(-2466.9376, Lsat6.Value.LogLikelihoodNats, 1e-5),
            () => Assert.Equal(-3.615, Lsat6.Value.Difficulty(0)!.Value.MeanLogits / Lsat6.Value.AbilitySpread.MedianLogits, 6e-4),
            () => Assert.Equal(-2.780, Lsat6.Value.Difficulty(4)!.Value.MeanLogits / Lsat6.Value.AbilitySpread.MedianLogits, 6e-4));

    [Fact]
    public void Fit_FiveNodes_HasTheSmallErrorOfFiveNodes() =>
        // .75527 with 5 nodes against .755133: the rule really has as many nodes as asked for.
        Assert.Equal(0.75527, ResponseModel.Fit(Tables.Lsat(6), Flat with { NodeCount = 5 }).AbilitySpread.MedianLogits, 5e-5);

    [Fact]
    public void Ability_AtTheLikelihoodsPeak_IsThePosteriorMeanByScore()
    {
        // The table holds the difficulties for known; what doubt about them adds with 1000 pupils is below 2 in 100.
        var table = Tables.Named("rasch_eap_map_lsat6.csv");
        var (data, fit) = (Tables.Lsat(6), ResponseModel.Fit(Tables.Lsat(6), Flat with { AbilitySdLogits = 0.7551342785 }));
        foreach (var score in Enumerable.Range(0, 6))
        {
            var pupil = Enumerable.Range(0, 1000).First(i => data.Trials.Skip(5 * i).Take(5).Sum(t => t.Successes) == score);
            Assert.Equal(table[$"{score}"][0], fit.Ability(pupil, 0).MeanLogits, 1e-5);
            Assert.InRange(fit.Ability(pupil, 0).SdLogits, table[$"{score}"][1], table[$"{score}"][1] * 1.02);
        }
    }

    [Fact]
    public void Difficulty_LevelAlwaysManaged_IsNoneAndLeavesTheOthers()
    {
        var data = Tables.Lsat(6);
        var with = new ResponseData(data.Pupils, [.. data.Levels, new ResponseLevel(5)], [.. data.Trials, .. Enumerable.Range(0, 1000).Select(i => new ResponseTrial(i, 5, 0, 2, 2))]);
        var fit = ResponseModel.Fit(with, Flat);
        Assert.Null(fit.Difficulty(5));
        Assert.Null(fit.Contrast(5, 0));
        Assert.Null(fit.Chance(0, 5, 0));
        Assert.True(fit.Cautions.HasFlag(ResponseCaution.OneSided));
        for (var j = 0; j < 5; j++) Assert.Equal(Lsat6.Value.Difficulty(j)!.Value.MeanLogits, fit.Difficulty(j)!.Value.MeanLogits, 1e-6);
    }
}
