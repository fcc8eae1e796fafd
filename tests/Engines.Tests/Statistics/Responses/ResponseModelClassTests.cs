using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>A simulated class against other programs; tables and commands in data/. Source: [Stan2017] for the full posterior.</summary>
public sealed class ResponseModelClassTests
{
    [Fact]
    public void Fit_GivenSpreads_IsTheMarginalModeOfBaseR()
    {
        var table = Tables.Named("class_marginal_mode_s1.2_o0.7.csv");
        var fit = ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7) with { NodeCount = 25, ToleranceSd = 1e-9 });
        string[] names = ["kappa0", "kappa1_logsec", "phi_lesson"];
        for (var k = 0; k < 3; k++)
        {
            Assert.Equal(table[names[k]][0], fit.Coefficients[k].Value.MeanLogits, 1e-8);
            Assert.Equal(table[names[k]][1], fit.Coefficients[k].Value.SdLogits, 1e-6);
        }
        var residual = fit.Difficulty(11)!.Value.MeanLogits - fit.Coefficients[0].Value.MeanLogits - fit.Coefficients[1].Value.MeanLogits * Math.Log(20 / 5.0);
        Assert.Equal(0.720158062, residual, 1e-8);
        Assert.Equal(-289.0328707771, fit.EvidenceNats!.Value, 1e-6);
    }

    [Fact]
    public void Fit_GivenSpreads_IsNotTheJointMode()
    {
        // The joint mode treats 30 abilities as if they were known: its slope is 4 % flatter and its ranges narrower. It must not come out.
        var table = Tables.Named("class_joint_map_s1.2_o0.7.csv");
        var fit = ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7));
        Assert.True(fit.Coefficients[1].Value.MeanLogits - table["kappa1_logsec"][0] > 0.03);
        Assert.True(fit.Coefficients[1].Value.SdLogits > table["kappa1_logsec"][1]);
    }

    [Fact]
    public void Fit_SevenNodes_AreAsGoodAsFifty()
    {
        // 7 nodes leave the border within 2e-5 of the exact integral on this class; 5 within 2e-4.
        var exact = ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7) with { NodeCount = 51 });
        var fit = ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions(1.2, 0.7));
        for (var j = 0; j < 12; j++) Assert.Equal(exact.Difficulty(j)!.Value.MeanLogits, fit.Difficulty(j)!.Value.MeanLogits, 5e-5);
    }

    [Theory]
    [InlineData(false, 1.261984, 0.760309)]
    [InlineData(true, 1.222661, 0.633052)]
    public void Fit_SpreadsByEvidence_AreThoseOfBaseR(bool hasPrior, double ability, double residual)
    {
        var options = Tables.ClassOptions() with { GridPupilCount = 0, NodeCount = 15, ToleranceSd = 1e-8 };
        if (!hasPrior) options = options with { Priors = options.Priors with { Ability = null, Residual = null } };
        var fit = ResponseModel.Fit(Tables.SimulatedClass(), options);
        Assert.Equal(ability, fit.AbilitySpread.MedianLogits, 5e-4);
        Assert.Equal(residual, fit.ResidualSpread!.Value.MedianLogits, 5e-4);
        Assert.Equal(hasPrior ? -289.138495720053 : -288.991651334426, fit.EvidenceNats!.Value, 1e-4);
    }

    [Fact]
    public void Fit_WholeGrid_AgreesWithSampling()
    {
        var stan = Tables.Named("class_stan_posterior.csv");
        var fit = ResponseModel.Fit(Tables.SimulatedClass(), Tables.ClassOptions());
        Assert.Equal(stan["lsig"][0], fit.AbilitySpread.MeanLogLogits, 0.02);
        Assert.Equal(stan["lome"][0], fit.ResidualSpread!.Value.MeanLogLogits, 0.02);
        Assert.InRange(fit.AbilitySpread.LogSd / stan["lsig"][2], 0.9, 1.1);
        Assert.InRange(fit.ResidualSpread.Value.LogSd / stan["lome"][2], 0.9, 1.1);
        for (var i = 0; i < 30; i++) Close(stan[$"theta[{i + 1}]"], fit.Ability(i, 0), 0.1, 0.95, 1.03);
        // Posteriors of levels tried two or three times are skewed: their means lie a tenth of a standard deviation beyond their modes.
        for (var j = 0; j < 12; j++) Close(stan[$"b[{j + 1}]"], fit.Difficulty(j)!.Value, 0.12, 0.93, 1.03);
        Close(stan["phi"], fit.Coefficients[2].Value, 0.1, 0.95, 1.03);
        Close(stan["eta_1_7_5"], fit.Chance(0, 6, 5)!.Logit, 0.05, 0.97, 1.03);
        Close(stan["eta_30_1_5"], fit.Chance(29, 0, 5)!.Logit, 0.05, 0.97, 1.03);
        Assert.Equal(stan["p_1_7_5"][0], fit.Chance(0, 6, 5)!.ChanceFraction, 0.005);
        Assert.Equal(stan["p_30_1_5"][0], fit.Chance(29, 0, 5)!.ChanceFraction, 0.005);
        var (low, high) = fit.Chance(29, 0, 5)!.Range(0.9);
        Assert.Equal(stan["p_30_1_5"][3], low, 0.01);
        Assert.Equal(stan["p_30_1_5"][7], high, 0.01);
    }

    private static void Close(double[] sampled, Estimate estimate, double gapInSd, double lowRatio, double highRatio)
    {
        Assert.Equal(0, (estimate.MeanLogits - sampled[0]) / sampled[2], gapInSd);
        Assert.InRange(estimate.SdLogits / sampled[2], lowRatio, highRatio);
    }
}
