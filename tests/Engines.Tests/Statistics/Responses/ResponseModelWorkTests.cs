using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ResponseModelWorkTests
{
    private static readonly Lazy<ResponseData> Timed = new(() =>
    {
        // The simulated class with a time for every other failure.
        var data = Tables.SimulatedClass();
        double[] doses = [2, 3, 5, 8, 12, 20];
        return new(data.Pupils, data.Levels, [.. data.Trials.Select((t, k) => t.Successes == 0 && k % 2 == 0 ? t with { HeldS = Math.Round(doses[t.Level % 6] * (0.3 + k % 7 * 0.1), 1) } : t)]);
    });

    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    public void Fit_OnOneTwoOrSevenThreads_IsTheSameToTheBit(double drift)
    {
        // Pieces of 20 terms: some twenty of them, so that seven threads have something to disagree about.
        ResponseFit On(int threads) => ResponseModel.Fit(Timed.Value, new() { DriftSdLogits = drift }, new(threads) { PieceTermCount = 20 });
        var one = Everything(On(1));
        Assert.Equal(one, Everything(On(2)));
        Assert.Equal(one, Everything(On(7)));
    }

    [Fact]
    public void Fit_InOneTwoTenOrMorePieces_IsTheSameButForRounding()
    {
        var options = new ResponseOptions { ToleranceSd = 1e-9, AbilitySdLogits = 1.2, ResidualSdLogits = 0.6 };
        var whole = Everything(ResponseModel.Fit(Timed.Value, options));
        foreach (var size in new[] { 200, 40, 1 })
        {
            var cut = Everything(ResponseModel.Fit(Timed.Value, options, new() { PieceTermCount = size }));
            for (var k = 0; k < whole.Length; k++) Assert.Equal(whole[k], cut[k], 1e-9);
        }
    }

    [Fact]
    public void Fit_AskedTwice_AnswersTheSameToTheBit()
    {
        var fit = ResponseModel.Fit(Timed.Value);
        Assert.Equal(Everything(fit), Everything(fit));
    }

    [Fact]
    public void Fit_NearAnother_IsTheSameWithinTheTolerance()
    {
        var data = Timed.Value;
        var before = ResponseModel.Fit(new(data.Pupils, data.Levels, [.. data.Trials.Take(data.Trials.Count - 1)]));
        var (cold, warm) = (ResponseModel.Fit(data), ResponseModel.Fit(data, null, new() { Near = before }));
        Assert.True(warm.RoundCount < cold.RoundCount);
        var (one, other) = (Everything(cold), Everything(warm));
        for (var k = 0; k < one.Length; k++) Assert.Equal(one[k], other[k], 2e-3);
        // One of other pupils is left aside.
        Assert.Equal(Everything(ResponseModel.Fit(new(Tables.Pupils(1), Tables.Levels(1), [new(0, 0, 0, 1, 2)]))),
            Everything(ResponseModel.Fit(new(Tables.Pupils(1), Tables.Levels(1), [new(0, 0, 0, 1, 2)]), null, new() { Near = before })));
    }

    [Fact]
    public void Fit_Cancelled_StopsWithinAPass()
    {
        using var source = new CancellationTokenSource();
        var told = new List<double>();
        var progress = new Told(d =>
        {
            told.Add(d);
            if (d > 0.4) source.Cancel();
        });
        Assert.ThrowsAny<OperationCanceledException>(() => ResponseModel.Fit(Timed.Value, null, new(1, progress, source.Token)));
        Assert.True(told[^1] < 0.6, "Nothing more is told once it was cancelled.");
    }

    [Fact]
    public void Fit_Progress_GoesFromBelowToOne()
    {
        var told = new List<double>();
        ResponseModel.Fit(Timed.Value, null, new(1, new Told(told.Add)));
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1]);
        Assert.True(told.Count > 5);
    }

    [Theory]
    [InlineData(1e-2)]
    [InlineData(1e-4)]
    [InlineData(1e-5)]
    public void Fit_SpreadsAtAnyTolerance_AreAsNearAsItSays(double toleranceSd)
    {
        // A law: what a step still gains is half the square of the distance. How the determinant pulls is looked at again only beyond a hundredth: that adds a little.
        ResponseFit With(double tolerance, bool isFlat) => ResponseModel.Fit(isFlat ? Tables.Lsat(6) : Timed.Value, new() { IsFlat = isFlat, ToleranceSd = tolerance, GridPupilCount = 0, ChoicePupilCount = 0 });
        foreach (var isFlat in new[] { true, false })
        {
            var (one, best) = (With(toleranceSd, isFlat), With(1e-9, isFlat));
            Assert.False(best.Cautions.HasFlag(ResponseCaution.NotConverged));
            var gap = Math.Min(0.1, 100 * toleranceSd) + (isFlat ? 0 : 2e-3);
            Assert.Equal(0, (one.AbilitySpread.MeanLogLogits - best.AbilitySpread.MeanLogLogits) / best.AbilitySpread.LogSd, gap);
            if (!isFlat) Assert.Equal(0, (one.ResidualSpread!.Value.MeanLogLogits - best.ResidualSpread!.Value.MeanLogLogits) / best.ResidualSpread!.Value.LogSd, gap);
        }
    }

    [Fact]
    public void Fit_SpreadsWithoutAssumptions_SayWhenTheyRunToTheEdge()
    {
        // Everybody is the same and so is every level: nothing spreads, and without a prior nothing holds the spreads back.
        var trials = Enumerable.Range(0, 10).SelectMany(i => Enumerable.Range(0, 3).Select(j => new ResponseTrial(i, j, 0, 5, 10))).ToList();
        var data = new ResponseData(Tables.Pupils(10), Tables.Levels(3), trials);
        Assert.True(ResponseModel.Fit(data, new() { Priors = new() { Ability = null, Residual = null } }).Cautions.HasFlag(ResponseCaution.SpreadAtEdge));
        Assert.False(ResponseModel.Fit(data).Cautions.HasFlag(ResponseCaution.SpreadAtEdge));
    }

    private static double[] Everything(ResponseFit fit)
    {
        var (pupils, levels) = (fit.Connectedness.PupilCount, fit.Connectedness.LevelCount);
        return
        [
            fit.EvidenceNats!.Value, fit.AbilitySpread.MedianLogits, fit.AbilitySpread.LogSd, fit.ResidualSpread!.Value.MedianLogits,
            .. fit.Coefficients.SelectMany(c => new[] { c.Value.MeanLogits, c.Value.SdLogits }),
            .. Enumerable.Range(0, levels).SelectMany(j => new[] { fit.Difficulty(j)!.Value.MeanLogits, fit.Difficulty(j)!.Value.SdLogits }),
            .. Enumerable.Range(0, pupils).SelectMany(i => fit.Chances(i, [.. Enumerable.Range(0, levels)], 3).SelectMany(c => new[] { c!.Logit.MeanLogits, c.Logit.SdLogits, c.ChanceFraction })),
            .. fit.Choice.SelectMany(c => new[] { c.MarginalLogits, c.ConditionalLogits, c.JointSdLogits }),
        ];
    }

    private sealed class Told(Action<double> tell) : IProgress<ResponseProgress>
    {
        public void Report(ResponseProgress value) => tell(value.DoneFraction);
    }
}
