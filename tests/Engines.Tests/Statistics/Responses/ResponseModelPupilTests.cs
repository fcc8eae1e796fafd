using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>One pupil on levels of known difficulty, where the answer is a single integral. Values by adaptive quadrature in two programs to 1e-9 (recomputed; no publication).</summary>
public sealed class ResponseModelPupilTests
{
    [Fact]
    public void Ability_FourTrials_IsTheExactIntegral()
    {
        var fit = Known(1.2, [-0.5, 0, 0.5, 1], [new(0, 0, 0, 1, 1), new(0, 1, 0, 1, 1), new(0, 2, 0, 0, 1), new(0, 3, 0, 1, 1)]);
        Assert.Equal(0.798705743, fit.Ability(0, 0).MeanLogits, 1e-6);
        Assert.Equal(0.822420078, fit.Ability(0, 0).SdLogits, 1e-6);
        Assert.Equal(-2.879354925, fit.EvidenceNats!.Value, 1e-6);
        // The exact chance of .55 to .75 is .4160; a normal curve through mean and sd gives it to within 1 in 100.
        Assert.Equal(0.416029, fit.Chance(0, 1, 0)!.WithinFraction(0.55, 0.75), 0.01);
    }

    [Fact]
    public void Ability_FifteenOfFifteen_StaysFinite()
    {
        var fit = Known(1.2, [0], [new(0, 0, 0, 15, 15)]);
        Assert.Equal(2.308354992, fit.Ability(0, 0).MeanLogits, 1e-6);
        Assert.Equal(0.715561048, fit.Ability(0, 0).SdLogits, 1e-6);
        Assert.Equal(0.893131713, fit.Chance(0, 0, 0)!.ChanceFraction, 5e-3);
        Assert.Equal(15, fit.Chance(0, 0, 0)!.TrialCount);
    }

    [Fact]
    public void Ability_OneSuccess_IsTheClosedIntegral()
    {
        // 2·E[p(1 − p)] under N(0, 1), and 1 minus its square, by symmetry.
        var fit = Known(1, [0], [new(0, 0, 0, 1, 1)]);
        Assert.Equal(0.413241928, fit.Ability(0, 0).MeanLogits, 1e-6);
        Assert.Equal(0.829231109, Math.Pow(fit.Ability(0, 0).SdLogits, 2), 1e-6);
    }

    [Theory]
    [InlineData(1, 1, 0.696734670144)]
    [InlineData(2, 1.44, 0.831141224556)]
    [InlineData(0.62, 0.3, 0.641107266850)]
    public void Chance_NothingTried_IsTheLogisticOverTheNormal(double mean, double variance, double expected)
    {
        var fit = Known(Math.Sqrt(variance), [-mean], []);
        Assert.Equal(expected, fit.Chance(0, 0, 0)!.ChanceFraction, 2e-6);
        Assert.Equal(ResponseCaution.NoTrials | ResponseCaution.MostlyAssumption, fit.Chance(0, 0, 0)!.Logit.Cautions);
        Assert.Equal(0, fit.Ability(0, 0).DataShareFraction, 1e-6);
    }

    [Fact]
    public void Range_OfAnyChance_HoldsAsMuchAsItSays()
    {
        var chance = ResponseModel.Fit(Tables.SimulatedClass()).Chance(3, 7, 5)!;
        foreach (var confidence in new[] { 0.5, 0.9 })
        {
            var (low, high) = chance.Range(confidence);
            Assert.Equal(confidence, chance.WithinFraction(low, high), 1e-9);
            Assert.Equal((1 - confidence) / 2, chance.WithinFraction(0, low), 1e-9);
        }
        Assert.Equal(1, chance.WithinFraction(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => chance.WithinFraction(0.9, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => chance.Range(1));
    }

    /// <summary>Assumptions so narrow that the levels stand where they are said to stand.</summary>
    private static ResponseFit Known(double sd, double[] difficulties, ResponseTrial[] trials) => ResponseModel.Fit(
        new(Tables.Pupils(1), [.. difficulties.Select((b, j) => new ResponseLevel(j) { OrderLogits = b })], trials),
        new()
        {
            AbilitySdLogits = sd, ResidualSdLogits = 1e-5, DriftSdLogits = 0, NodeCount = 31, ToleranceSd = 1e-8,
            Priors = new() { Middle = new(0, 1e-5), Order = new(1, 1e-5), TaskShareFraction = 0 },
        });
}
