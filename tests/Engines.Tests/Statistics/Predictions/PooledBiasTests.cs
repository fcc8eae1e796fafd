using CsCheck;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Predictions;

public sealed class PooledBiasTests
{
    private static readonly Gen<ExpectedSet[]> Sets = Gen.Select(Gen.Int[1, 6], Gen.Int[3, 7]).SelectMany((n, tenths) =>
        Gen.Int[0, n].Select(k => new ExpectedSet(k, 0, n, tenths / 10.0))).Array[0, 5];

    private static readonly Gen<ExpectedSet[][]> Classes = Sets.Array[1, 8];

    [Fact]
    public void Given_OneSuccessOfOne_IsTheClosedIntegral()
    {
        // By hand: one of one said where the model says a half, bias normal(0, 1): the mean is 2 E[p (1 − p)] = .4132419283 (mean value theorem for the normal
        // law), the variance 1 − mean², for the square's mean is 1 by symmetry.
        var bias = PooledBias.Given([[new(1, 0, 1, .5)]], 0, 1).Pupils[0];
        Assert.Equal(.4132419283, bias.MeanLogits, 1e-9);
        Assert.Equal(Math.Sqrt(.8292311087), bias.SdLogits, 1e-9);
    }

    [Fact]
    public void Given_FifteenOfFifteen_AgreesWithTheExactIntegral()
    {
        // An exact integral in a second program, nine digits: normal(0, 1.2²) before, 15 of 15 where the model says a half.
        var bias = PooledBias.Given([[new(15, 0, 15, .5)]], 0, 1.2).Pupils[0];
        Assert.Equal(2.308354992, bias.MeanLogits, 1e-7);
        Assert.Equal(.715561048, bias.SdLogits, 1e-7);
        // Four levels half a logit apart, 1, 1, 0, 1 said: the same program.
        double Chance(double b) => 1 / (1 + Math.Exp(b));
        var four = PooledBias.Given([[new(1, 0, 1, Chance(-.5)), new(1, 0, 1, Chance(0)), new(0, 0, 1, Chance(.5)), new(1, 0, 1, Chance(1))]], 0, 1.2).Pupils[0];
        Assert.Equal(.798705743, four.MeanLogits, 1e-8);
        Assert.Equal(.822420078, four.SdLogits, 1e-8);
    }

    [Fact]
    public void Fit_AnyClass_AgreesWithASumOverEverything() => Gen.Select(Classes, Gen.Int[0, 7]).Sample((pupils, which) =>
    {
        var own = PooledBias.Fit(pupils);
        // The plain second version: one even grid of means, of log spreads and of standardised biases, all finer and summed without any shortcut.
        var chosen = which % pupils.Length;
        double total = 0, first = 0, second = 0, classMean = 0, above = 0;
        for (var mean = -6.0; mean <= 6; mean += .25)
            for (var s = 0; s <= 30; s++)
            {
                var spread = .1 * Math.Pow(45, s / 30.0);
                var weight = spread * (s is 0 or 30 ? .5 : 1) * Math.Exp(-mean * mean / 2 - spread * spread / 2);
                double m0 = 0, m1 = 0, m2 = 0, over = 0;
                for (var p = 0; p < pupils.Length; p++)
                {
                    double sum = 0;
                    for (var z = -6.0; z <= 6; z += .15)
                    {
                        var bias = mean + spread * z;
                        var like = Math.Exp(-z * z / 2) * .15 / Math.Sqrt(2 * Math.PI);
                        foreach (var set in pupils[p])
                        {
                            var chance = 1 / (1 + Math.Exp(-Math.Log(set.ModelFraction / (1 - set.ModelFraction)) - bias));
                            like *= Math.Pow(chance, set.PredictedCount) * Math.Pow(1 - chance, set.TrialCount - set.PredictedCount);
                        }
                        sum += like;
                        if (p == chosen) (m0, m1, m2, over) = (m0 + like, m1 + like * bias, m2 + like * bias * bias, over + (bias > 0 ? like : 0));
                    }
                    weight *= sum;
                }
                total += weight;
                classMean += weight * mean;
                first += weight * m1 / m0;
                second += weight * m2 / m0;
                above += weight * over / m0;
            }
        var pupil = own.Pupils[chosen];
        Assert.Equal(first / total, pupil.MeanLogits, 2e-3);
        Assert.Equal(Math.Sqrt(second / total - Math.Pow(first / total, 2)), pupil.SdLogits, 5e-3);
        Assert.Equal(classMean / total, own.ClassMeanLogits, 2e-3);
        Assert.Equal(above / total, pupil.OverFraction, .03);
    }, iter: 10);

    [Fact]
    public void Fit_AnyClass_TurnsWithItsSigns() => Classes.Sample(pupils =>
    {
        var one = PooledBias.Fit(pupils);
        var other = PooledBias.Fit(pupils.Select(sets => sets.Select(s => new ExpectedSet(s.TrialCount - s.PredictedCount, 0, s.TrialCount, 1 - s.ModelFraction)).ToArray()).ToArray());
        for (var i = 0; i < pupils.Length; i++)
        {
            Assert.Equal(-one.Pupils[i].MeanLogits, other.Pupils[i].MeanLogits, 1e-6);
            Assert.Equal(-one.Pupils[i].LowLogits, other.Pupils[i].HighLogits, 1e-6);
            Assert.Equal(1 - one.Pupils[i].OverFraction, other.Pupils[i].OverFraction, 1e-6);
            Assert.InRange(one.Pupils[i].MeanLogits, one.Pupils[i].LowLogits, one.Pupils[i].HighLogits);
        }
        Assert.Equal(one.BetweenLogits, other.BetweenLogits, 1e-6);
    }, iter: 20);

    [Fact]
    public void Fit_PupilWithLittle_LeansOnTheClass()
    {
        // Nine pupils say 4 of 5 where the model says 2 of 5, six times each; a tenth said so once, an eleventh the opposite once, a twelfth nothing.
        var sure = Enumerable.Repeat(new ExpectedSet(4, 2, 5, .4), 6).ToArray();
        var pupils = Enumerable.Repeat(sure, 9).Append([sure[0]]).Append([new(0, 2, 5, .4)]).Append([]).ToArray();
        var biases = PooledBias.Fit(pupils);
        var (full, agrees, differs, silent) = (biases.Pupils[0], biases.Pupils[9], biases.Pupils[10], biases.Pupils[11]);
        Assert.Equal(BiasSign.Over, full.Sign(.95));
        Assert.True(full.SdLogits < agrees.SdLogits && agrees.SdLogits < silent.SdLogits);
        Assert.True(differs.MeanLogits < silent.MeanLogits && silent.MeanLogits < full.MeanLogits, "All are drawn towards the class, and keep their order.");
        Assert.True(differs.MeanLogits > -1, "One set against a class is not believed at once.");
        Assert.True(full.DataFraction > .5 && differs.DataFraction < .5, "What is said of the one who differs is mostly said by the class.");
        Assert.Equal(0, silent.DataFraction, .02);
        Assert.Equal((0, 0), (silent.SetCount, silent.TrialCount));
        Assert.Equal(biases.ClassMeanLogits, silent.MeanLogits, 0.02);
        Assert.Equal(PredictionCautions.None, biases.Cautions);
    }

    [Fact]
    public void Fit_ManyPupils_FindsWhatMadeThem()
    {
        // Counts as a class of 300 would say them, by the middles of their law: biases normal(.5, .6²), 12 sets of 5 at a model's half.
        var pupils = Enumerable.Range(0, 300).Select(i =>
        {
            var bias = .5 + .6 * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (i + .5) / 300);
            var said = 60 / (1 + Math.Exp(-bias));
            // Binomial spread about it, laid out evenly over neighbours of equal bias.
            var count = (int)Math.Clamp(Math.Round(said + Math.Sqrt(said * (1 - said / 60)) * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (i * 7 % 20 + .5) / 20)), 0, 60);
            return new[] { new ExpectedSet(count, 0, 60, .5) };
        }).ToArray();
        var biases = PooledBias.Fit(pupils);
        Assert.Equal(.5, biases.ClassMeanLogits, .05);
        Assert.Equal(.6, biases.BetweenLogits, .05);
        Assert.Equal(.6 / Math.Sqrt(300), biases.ClassMeanSdLogits, .01);
    }

    [Fact]
    public void Fit_NothingSaid_IsWhatWasHeldBefore()
    {
        var biases = PooledBias.Fit([[], []]);
        Assert.Equal(0, biases.ClassMeanLogits, 1e-9);
        Assert.Equal(1, biases.ClassMeanSdLogits, .01);
        Assert.Equal(.5, biases.Pupils[0].OverFraction, 1e-6);
        Assert.Equal(PredictionCautions.NoTrials | PredictionCautions.FewPupils, biases.Cautions);
        Assert.Empty(PooledBias.Fit([]).Pupils);
    }

    [Fact]
    public void Fit_AbsurdlyMuch_StaysANumber()
    {
        var biases = PooledBias.Fit([[new(100_000, 0, 100_000, .001)], [new(0, 0, 100_000, .999)]]);
        Assert.All(biases.Pupils, p => Assert.True(double.IsFinite(p.MeanLogits) && double.IsFinite(p.LowLogits) && double.IsFinite(p.HighLogits)));
        Assert.True(double.IsFinite(PooledBias.Given([[new(100_000, 0, 100_000, .5)]], -4, .1).Pupils[0].MeanLogits));
    }

    [Fact]
    public void Fit_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PooledBias.Fit([[new(1, 0, 0, .5)]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PooledBias.Fit([[new(3, 0, 2, .5)]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PooledBias.Fit([[new(1, 0, 2, 1)]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PooledBias.Given([], 5, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PooledBias.Given([], 0, .01));
        Assert.Throws<ArgumentOutOfRangeException>(() => PooledBias.Fit([[]]).Pupils[0].Sign(.5));
    }
}
