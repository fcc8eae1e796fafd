using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ConnectednessTests
{
    [Fact]
    public void Fit_TwoHalvesThatShareNothing_SaysWhatIsOnlyAssumed()
    {
        // Pupils 1, 2 tried levels 1, 2 only; pupils 3, 4 levels 3, 4 only. Beforehand levels differ by N(0, 2).
        var trials = Tables.Rows("disconnected_4x4.csv").Select(r => ResponseTrial.Single(int.Parse(r[0]) - 1, int.Parse(r[1]) - 1, 0, r[2] == "1")).ToList();
        ResponseFit Fit(params ResponseTrial[] more) => ResponseModel.Fit(new(Tables.Pupils(4), Tables.Levels(4), [.. trials, .. more]),
            new() { AbilitySdLogits = 1, ResidualSdLogits = 1, Priors = new() { Middle = new(0, 1e-4), TaskShareFraction = 0 } });
        var apart = Fit();
        Assert.Equal(2, apart.Connectedness.GroupCount);
        Assert.True(apart.Cautions.HasFlag(ResponseCaution.Disconnected));
        Assert.Equal(apart.Connectedness.OfPupil(0), apart.Connectedness.OfLevel(1));
        Assert.NotEqual(apart.Connectedness.OfPupil(0), apart.Connectedness.OfLevel(2));

        // Within a half the data carry more than half; across, less, and it is said twice.
        Assert.Equal(ResponseCaution.None, apart.Contrast(0, 1)!.Value.Cautions);
        Assert.Equal(ResponseCaution.Disconnected | ResponseCaution.MostlyAssumption, apart.Contrast(0, 2)!.Value.Cautions);
        Assert.True(apart.Chance(0, 3, 0)!.Logit.Cautions.HasFlag(ResponseCaution.Disconnected));
        Assert.False(apart.Chance(0, 1, 0)!.Logit.Cautions.HasFlag(ResponseCaution.Disconnected));

        var bridged = Fit(new(0, 2, 0, 1, 2), new(1, 3, 0, 1, 2), new(2, 0, 0, 1, 2));
        Assert.Equal(1, bridged.Connectedness.GroupCount);
        Assert.Equal(ResponseCaution.None, bridged.Contrast(0, 2)!.Value.Cautions);
        Assert.True(bridged.Contrast(0, 2)!.Value.SdLogits < apart.Contrast(0, 2)!.Value.SdLogits - 0.1);
    }

    [Theory]
    [InlineData("disconnected", false)]
    [InlineData("6 bridging trials added", true)]
    public void JointMode_TwoHalvesThatShareNothing_HasTheDoubtOfBaseR(string named, bool isBridged)
    {
        // Base R, joint mode of abilities N(0, 1.2²) and levels N(0, 1) with its curvature: that is the control's arithmetic and not the engine's, which is a little
        // less sure. The bridges, which the table does not name, were found in R as those that give its six values: three trials each of pupils 1 and 4.
        var trials = Tables.Rows("disconnected_4x4.csv").Select(r => ResponseTrial.Single(int.Parse(r[0]) - 1, int.Parse(r[1]) - 1, 0, r[2] == "1")).ToList();
        if (isBridged) trials.AddRange([new(0, 2, 0, 1, 3), new(3, 0, 0, 3, 3)]);
        var data = new ResponseData(Tables.Pupils(4), [.. Enumerable.Range(0, 4).Select(_ => new ResponseLevel(0, LevelDose.Hold(5)))], trials);
        ResponsePriors priors = new() { Middle = new(0, 1e-4), DoseSlope = new(0, 1), OwnSlopeSdLogits = 0, TaskShareFraction = 0 };
        var joint = new JointMode(data, priors, 1.2, 1);
        var fit = ResponseModel.Fit(data, new() { AbilitySdLogits = 1.2, ResidualSdLogits = 1, DriftSdLogits = 0, NodeCount = 61, ToleranceSd = 1e-9, Priors = priors });
        foreach (var row in Tables.Rows("connectedness_case.csv").Where(r => r[0] == named))
        {
            int[] pair = [.. row[1].Split('-').Select(b => int.Parse(b[1..]) - 1)];
            var (mean, sd) = joint.Contrast(pair[0], pair[1]);
            Assert.Equal(Tables.Number(row[2]), mean, 1e-6);
            Assert.Equal(Tables.Number(row[3]), sd, 1e-6);
            Assert.InRange(fit.Contrast(pair[0], pair[1])!.Value.SdLogits / sd, 0.97, 1.05);
        }
    }

    [Fact]
    public void IsTwoSided_ByHand_NeedsStepsBothWays()
    {
        Connectedness Of(params ResponseTrial[] trials) => ResponseModel.Fit(new(Tables.Pupils(2), Tables.Levels(2), trials)).Connectedness;
        // Pupil 0 shows that level 1 is harder. Nobody shows the reverse, until pupil 1 does.
        ResponseTrial[] one = [new(0, 0, 0, 1, 1), new(0, 1, 0, 0, 1)];
        Assert.False(Of(one).IsTwoSided);
        Assert.False(Of([.. one, new(1, 0, 0, 1, 2)]).IsTwoSided);
        Assert.True(Of([.. one, new(1, 0, 0, 0, 1), new(1, 1, 0, 1, 1)]).IsTwoSided);
        // Managed and missed at both is steps both ways at once.
        Assert.True(Of(new ResponseTrial(0, 0, 0, 1, 2), new ResponseTrial(0, 1, 0, 1, 2)).IsTwoSided);
    }

    [Fact]
    public void OfPupil_WithoutATrial_IsNone()
    {
        var fit = ResponseModel.Fit(new(Tables.Pupils(2), Tables.Levels(2), [new(0, 1, 0, 1, 2)]));
        Assert.Null(fit.Connectedness.OfPupil(1));
        Assert.Null(fit.Connectedness.OfLevel(0));
        Assert.Equal(0, fit.Connectedness.OfLevel(1));
        Assert.Equal(1, fit.Connectedness.GroupCount);
    }
}
