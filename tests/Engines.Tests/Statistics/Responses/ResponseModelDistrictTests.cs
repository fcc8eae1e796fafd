using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Spreads and border searched for together, with very many pupils first among some of them: other ways to the same place.</summary>
public sealed class ResponseModelDistrictTests
{
    [Theory]
    [InlineData(0, false)]
    [InlineData(0.2, true)]
    public void Fit_VeryManyPupils_IsThePeakOfTheSearchForFew(double drift, bool isTimed)
    {
        var data = District(isTimed);
        var together = ResponseModel.Fit(data, new() { DriftSdLogits = drift, ChoicePupilCount = 0 });
        // A grid for up to 2000 pupils takes the search for few, step by step over the spreads, and averages about its peak.
        var apart = ResponseModel.Fit(data, new() { DriftSdLogits = drift, ChoicePupilCount = 0, GridPupilCount = 2000 });
        Assert.False(together.Cautions.HasFlag(ResponseCaution.NotConverged));
        Assert.True(together.RoundCount < 20, $"{together.RoundCount}");
        Assert.Equal(apart.EvidenceNats!.Value, together.EvidenceNats!.Value, 2e-3);
        Assert.Equal(apart.AbilitySpread.MeanLogLogits, together.AbilitySpread.MeanLogLogits, 0.1 * apart.AbilitySpread.LogSd);
        Assert.InRange(together.AbilitySpread.LogSd / apart.AbilitySpread.LogSd, 0.95, 1.05);
        Assert.InRange(together.ResidualSpread!.Value.LogSd / apart.ResidualSpread!.Value.LogSd, 0.85, 1.15);
        for (var k = 0; k < apart.Coefficients.Count; k++) Close(apart.Coefficients[k].Value, together.Coefficients[k].Value);
        for (var j = 0; j < 10; j++) Close(apart.Difficulty(j)!.Value, together.Difficulty(j)!.Value);
        foreach (var i in new[] { 0, 7, 1200 }) Close(apart.Chance(i, 3, 1)!.Logit, together.Chance(i, 3, 1)!.Logit);
    }

    [Fact]
    public void Fit_VeryManyPupilsOnManyThreads_IsTheSameToTheBit()
    {
        var data = District(false);
        ResponseFit On(int threads) => ResponseModel.Fit(data, new() { DriftSdLogits = 0, ChoicePupilCount = 0 }, new(threads) { PieceTermCount = 500 });
        var (one, two, seven) = (On(1), On(2), On(7));
        Assert.Equal(one.EvidenceNats, two.EvidenceNats);
        Assert.Equal(one.Coefficients, two.Coefficients);
        Assert.Equal(one.Coefficients, seven.Coefficients);
        Assert.Equal(one.Chance(9, 2, 0)!.Logit, seven.Chance(9, 2, 0)!.Logit);
    }

    [Fact]
    public void Fit_SomePupilsFirst_EndsWhereAllFromTheBeginningDo()
    {
        var data = District(false, 6000);
        ResponseOptions options = new() { DriftSdLogits = 0, ChoicePupilCount = 0 };
        var nested = ResponseModel.Fit(data, options);
        // Beginning near another fit is a search among all, with the determinant seen from all.
        var whole = ResponseModel.Fit(data, options, new() { Near = nested });
        Assert.Equal(0, (nested.AbilitySpread.MeanLogLogits - whole.AbilitySpread.MeanLogLogits) / whole.AbilitySpread.LogSd, 0.02);
        Assert.Equal(0, (nested.ResidualSpread!.Value.MeanLogLogits - whole.ResidualSpread!.Value.MeanLogLogits) / whole.ResidualSpread!.Value.LogSd, 0.02);
        for (var k = 0; k < whole.Coefficients.Count; k++)
            Assert.Equal(0, (nested.Coefficients[k].Value.MeanLogits - whole.Coefficients[k].Value.MeanLogits) / whole.Coefficients[k].Value.SdLogits, 0.005);
        var tight = ResponseModel.Fit(data, options with { ToleranceSd = 1e-8 });
        for (var k = 0; k < tight.Coefficients.Count; k++)
            Assert.Equal(0, (nested.Coefficients[k].Value.MeanLogits - tight.Coefficients[k].Value.MeanLogits) / tight.Coefficients[k].Value.SdLogits, 0.005);
    }

    private static void Close(Estimate one, Estimate other)
    {
        Assert.Equal(0, (one.MeanLogits - other.MeanLogits) / one.SdLogits, 0.1);
        Assert.InRange(other.SdLogits / one.SdLogits, 0.9, 1.05);
    }

    private static ResponseData District(bool isTimed, int count = 1300)
    {
        var random = new Random(3);
        double[] doses = [2, 3, 5, 8, 12];
        var difficulties = Enumerable.Range(0, 10).Select(j => (j / 5 * 0.8) + 0.9 * Math.Log(doses[j % 5] / 5) + 0.4 * Normal.Sample(random, 0, 1)).ToArray();
        var (pupils, trials) = (new List<ResponsePupil>(), new List<ResponseTrial>());
        for (var i = 0; i < count; i++)
        {
            var ability = 1.1 * Normal.Sample(random, 0, 1);
            pupils.Add(new(i % 3 == 0 ? null : new FirstPrediction(0, 1 / (1 + Math.Exp(difficulties[0] - ability + Normal.Sample(random, 0, 1))))));
            for (var k = 0; k < 6; k++)
            {
                var level = random.Next(10);
                var u = random.NextDouble();
                var eta = ability - difficulties[level];
                var isHeld = u < 1 / (1 + Math.Exp(-eta));
                var held = doses[level % 5] * Math.Exp((eta - Math.Log(u / (1 - u))) / 0.9);
                trials.Add(ResponseTrial.Single(i, level, k / 3, isHeld, isTimed && !isHeld && k % 2 == 0 ? Math.Round(held, 1) : null));
            }
        }
        return new(pupils, [.. Enumerable.Range(0, 10).Select(j => new ResponseLevel(j / 5, LevelDose.Hold(doses[j % 5])))], trials);
    }
}
