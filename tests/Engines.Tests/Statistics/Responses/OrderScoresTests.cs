using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class OrderScoresTests
{
    [Fact]
    public void Of_ThreeTasks_IsTheNormalCurvesThirds()
    {
        // By hand: Φ⁻¹(.625/3.25) = Φ⁻¹(.192308) = −.869424, 0 and its mirror image.
        var scores = OrderScores.Of([7, 2, 9]);
        Assert.Equal(0, scores[0], 1e-12);
        Assert.Equal(-0.869424, scores[1], 1e-6);
        Assert.Equal(0.869424, scores[2], 1e-6);
    }

    [Fact]
    public void Of_AnyOrder_RisesWithIt() => Gen.Int[1, 6].Array[0, 12].Sample(ranks =>
    {
        var scores = OrderScores.Of(ranks);
        Assert.Equal(0, scores.Sum(), 1e-9);
        for (var i = 0; i < ranks.Length; i++)
            for (var j = 0; j < ranks.Length; j++) Assert.Equal(ranks[i].CompareTo(ranks[j]), Math.Sign(Math.Round(scores[i] - scores[j], 12)));
    });
}
