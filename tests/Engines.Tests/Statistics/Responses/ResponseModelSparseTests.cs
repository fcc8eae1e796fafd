using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Classes as odd as they come: few trials, nothing but failures, levels without a dose or without a trial, watches that contradict ticks.</summary>
public sealed class ResponseModelSparseTests
{
    private static readonly Gen<ResponseData> Odd =
        from size in Gen.Select(Gen.Int[1, 20], Gen.Int[1, 12], Gen.Int[1, 7])
        from share in Gen.Int[0, 2].Select(k => new[] { 0.02, 0.5, 0.98 }[k])
        from doses in Gen.Select(Gen.Int[0, 4], Gen.Double[1.2, 20], Gen.Double[-1.5, 1.5], Gen.Int[0, 2]).Array[size.Item2]
        from predictions in Gen.Select(Gen.Int[0, size.Item2 - 1], Gen.Double[0, 1], Gen.Bool).Array[size.Item1]
        from trials in Gen.Select(Gen.Int[0, size.Item1 - 1], Gen.Int[0, size.Item2 - 1], Gen.Int[0, size.Item3 - 1], Gen.Double[0, 1], Gen.Int[0, 220]).Array[0, 60]
        let levels = doses.Select(d => new ResponseLevel(d.Item4, d.Item1 switch { 0 => null, 1 => LevelDose.TargetSize(d.Item2 / 10), _ => LevelDose.Hold(Math.Round(d.Item2, 1)) }) { OrderLogits = d.Item1 % 2 == 0 ? d.Item3 : null }).ToArray()
        select new ResponseData(
            [.. predictions.Select(p => new ResponsePupil(p.Item3 ? new FirstPrediction(p.Item1, p.Item2) : null))], levels,
            [.. trials.Select(t => ResponseTrial.Single(t.Item1, t.Item2, t.Item3, t.Item4 < share,
                t.Item5 % 3 == 0 && levels[t.Item2].Dose is { Measure: DoseMeasure.Hold } ? t.Item5 / 10.0 : null))]);

    [Theory]
    [InlineData(1, true)]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void Fit_AnyOddClass_IsFiniteWithACautionWhereItDidNotEnd(double firstMomentS, bool hasPriors) => Odd.Sample(data =>
    {
        var fit = ResponseModel.Fit(data, new()
        {
            FirstMomentS = firstMomentS,
            Priors = hasPriors ? ResponsePriors.Standard : ResponsePriors.Standard with { Ability = null, Residual = null },
        });
        for (var i = 0; i < data.Pupils.Count; i++)
        {
            var chance = fit.Chance(i, i % data.Levels.Count, 3)!;
            Assert.True(double.IsFinite(chance.Logit.MeanLogits) && chance.Logit.SdLogits > 0 && chance.ChanceFraction is > 0 and < 1);
        }
        for (var j = 0; j < data.Levels.Count; j++) Assert.True(double.IsFinite(fit.Difficulty(j)!.Value.MeanLogits) && fit.Difficulty(j)!.Value.SdLogits > 0);
        Assert.All(fit.Choice, c => Assert.True(double.IsFinite(c.GapSd)));
        if (!(fit.DistanceSd < 1e-5)) Assert.True(fit.Cautions.HasFlag(ResponseCaution.NotConverged));
    }, iter: 30);
}
