using CsCheck;
using MathNet.Numerics.Distributions;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ConditionalModelTests
{
    private static readonly ResponseOptions Flat = new() { IsFlat = true, ToleranceSd = 1e-8 };

    [Theory]
    [InlineData(6, -1091.569690)]
    [InlineData(7, -1182.699899)]
    public void Fit_LsatFlat_IsThatOfTwoOtherPrograms(int section, double logLikelihood)
    {
        // eRm 1.0.2 and psychotools 0.7.2 under R 4.2.2; table and command in data/. Source: [Mair2007].
        var table = Tables.Named($"rasch_cml_psychotools_lsat{section}.csv");
        var fit = ConditionalModel.Fit(Tables.Lsat(section), Flat);
        Assert.Equal(ResponseCaution.None, fit.Cautions);
        Assert.Equal(logLikelihood, fit.LogLikelihoodNats!.Value, 1e-5);
        for (var j = 0; j < 5; j++)
        {
            Assert.Equal(table[$"Q{j + 1}"][0], fit.Difficulty(j)!.Value.MeanLogits, 1e-5);
            Assert.Equal(table[$"Q{j + 1}"][1], fit.Difficulty(j)!.Value.SdLogits, 1e-5);
        }
    }

    [Fact]
    public void Fit_TwoQuestionsByHand_IsTheLogOfTheirDiscordantPairs()
    {
        // By hand: with two trials only pupils who managed one of them count; 400 managed the first alone and 29 the third alone, so the third is
        // harder by ln(400/29) = 2.624169, give or take √(1/400 + 1/29).
        var data = Tables.Lsat(6);
        var two = new ResponseData(data.Pupils, data.Levels, [.. data.Trials.Where(t => t.Level is 0 or 2)]);
        var contrast = ConditionalModel.Fit(two, Flat).Contrast(2, 0)!.Value;
        Assert.Equal(Math.Log(400 / 29.0), contrast.MeanLogits, 1e-9);
        Assert.Equal(Math.Sqrt(1 / 400.0 + 1 / 29.0), contrast.SdLogits, 1e-9);
        Assert.Null(ConditionalModel.Fit(two, Flat).Difficulty(1));
    }

    [Fact]
    public void Fit_RepeatedTrials_IsTheSumOverAllOrdersOfThem()
    {
        // The plain version: every way in which the pupil's total could have come about, one by one.
        var gen = from trials in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 1], Gen.Int[0, 3], Gen.Int[1, 3]).Array[4, 8]
                  select trials.Select(t => new ResponseTrial(t.Item1, t.Item2, t.Item3, Math.Min(t.Item4, t.Item5), t.Item5)).ToArray();
        var options = new ResponseOptions { ResidualSdLogits = 0.7, ToleranceSd = 1e-8 };
        gen.Sample(trials =>
        {
            var fit = ConditionalModel.Fit(new(Tables.Pupils(3), Tables.Levels(3), trials), options);
            var difficulties = Enumerable.Range(0, 3).Select(j => fit.Difficulty(j)?.MeanLogits ?? 0).ToArray();
            // Without growth in the data the lessons make no difference; with it, what growth was found is part of every logit.
            var growth = fit.Growth?.MeanLogits ?? 0;
            double Expected(double[] b, double g) => Enumerable.Range(0, 3).Sum(i => Enumerated([.. trials.Where(t => t.Pupil == i)], b, g));
            Assert.Equal(Expected(difficulties, growth), fit.LogLikelihoodNats!.Value, 1e-9);

            // And it is a peak: the likelihood's slope by each level is what the assumption N(0, .7²) pulls back, once their common middle is set free.
            for (var j = 0; j < 3 && fit.Difficulty(j) is not null; j++)
            {
                double[] up = [.. difficulties], down = [.. difficulties];
                (up[j], down[j]) = (up[j] + 1e-4, down[j] - 1e-4);
                var slope = (Expected(up, growth) - Expected(down, growth)) / 2e-4;
                Assert.Equal(difficulties[j] / 0.49, slope, 1e-5);
            }
        }, iter: 50);
    }

    [Fact]
    public void Difficulty_MiddleHardlyKnownOrKnown_IsTheSame()
    {
        // By law: a middle common to all levels is no difference of levels.
        ConditionalFit With(double middleSd) => ConditionalModel.Fit(Tables.SimulatedClass(), new() { Priors = new() { Middle = new(0.4, middleSd) } });
        var (vague, sure) = (With(5), With(0.01));
        var difficulties = Enumerable.Range(0, 12).Select(vague.Difficulty).Where(d => d is not null).Select(d => d!.Value).ToList();
        Assert.Equal(0, difficulties.Sum(d => d.MeanLogits), 1e-9);
        for (var j = 0; j < 12; j++)
        {
            Assert.Equal(sure.Difficulty(j) is null, vague.Difficulty(j) is null);
            if (sure.Difficulty(j) is not { } known) continue;
            Assert.Equal(known.MeanLogits, vague.Difficulty(j)!.Value.MeanLogits, 1e-5);
            Assert.Equal(known.SdLogits, vague.Difficulty(j)!.Value.SdLogits, 1e-5);
            Assert.True(known.SdLogits < 1.5, "The doubt about the middle, 5, is not in it.");
        }
    }

    [Fact]
    public void Fit_NobodyMissedAnEasyOne_HasNoFiniteAnswerWithoutAssumptions()
    {
        // Pupil 0 managed 0 and missed 1; pupil 1 the same: level 1 is harder, by any amount.
        var data = new ResponseData(Tables.Pupils(2), Tables.Levels(2), [new(0, 0, 0, 1, 1), new(0, 1, 0, 0, 1), new(1, 0, 0, 1, 1), new(1, 1, 0, 0, 1)]);
        var fit = ConditionalModel.Fit(data, Flat);
        Assert.Equal(ResponseCaution.OneSided, fit.Cautions);
        Assert.Null(fit.Difficulty(0));
        Assert.NotNull(ConditionalModel.Fit(data).Difficulty(0));
    }

    [Fact]
    public void Choice_ByPrivateKnowledge_IsNoticed()
    {
        // 1500 pupils, 8 trials each, choosing near their own ability: the two readings of the levels part (known theory, and seen in studies).
        var fit = ResponseModel.Fit(Simulated(1, 5), Plain);
        Assert.True(fit.Cautions.HasFlag(ResponseCaution.ChoiceMattered), string.Join("; ", fit.Choice));
        Assert.All(fit.Choice.Where(c => c.IsFar), c => Assert.True(c.GapSd > 0));
    }

    [Fact]
    public void Choice_AtRandom_IsNot()
    {
        var fit = ResponseModel.Fit(Simulated(0, 6), Plain);
        Assert.False(fit.Cautions.HasFlag(ResponseCaution.ChoiceMattered), string.Join("; ", fit.Choice));
        Assert.Equal(2, fit.Choice.Count);
    }

    private static readonly ResponseOptions Plain = new() { DriftSdLogits = 0, GridPupilCount = 0 };

    private static double Enumerated(ResponseTrial[] trials, double[] difficulty, double growth)
    {
        var single = trials.SelectMany(t => Enumerable.Repeat(growth * t.Lesson - difficulty[t.Level], t.Trials)).ToArray();
        var total = trials.Sum(t => t.Successes);
        var ways = Enumerable.Range(0, 1 << single.Length).Where(way => int.PopCount(way) == total)
            .Sum(way => Math.Exp(single.Where((_, k) => (way >> k & 1) == 1).Sum()));
        return trials.Sum(t => t.Successes * (growth * t.Lesson - difficulty[t.Level])) - Math.Log(ways);
    }

    private static ResponseData Simulated(double knowledge, int seed)
    {
        var random = new Random(seed);
        double[] doses = [1.5, 2, 3, 4, 6, 8, 11, 15, 20, 27];
        var truth = doses.Select(d => 0.9 * Math.Log(d / 5) + 0.3 * Normal.Sample(random, 0, 1)).ToArray();
        var trials = new List<ResponseTrial>();
        for (var i = 0; i < 1500; i++)
        {
            var ability = 1.2 * Normal.Sample(random, 0, 1);
            for (var k = 0; k < 8; k++)
            {
                var wish = knowledge * ability + (knowledge > 0 ? 0.5 : 3) * Normal.Sample(random, 0, 1);
                var level = knowledge > 0 ? Enumerable.Range(0, 10).MinBy(j => Math.Abs(truth[j] - wish)) : random.Next(10);
                trials.Add(ResponseTrial.Single(i, level, 0, random.NextDouble() < 1 / (1 + Math.Exp(truth[level] - ability))));
            }
        }
        return new(Tables.Pupils(1500), [.. doses.Select(d => new ResponseLevel(0, LevelDose.Hold(d)))], trials);
    }
}
