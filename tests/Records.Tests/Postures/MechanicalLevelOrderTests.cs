using Slantwise.Records.Postures;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Postures;

public sealed class MechanicalLevelOrderTests
{
    [Fact]
    public void PlacesOf_OnePostureHeldLonger_LaterPlace() =>
        Assert.Equal([2, 1, 3], MechanicalLevelOrder.PlacesOf([Of("stork", 5), Of("stork", 3), Of("stork", 10)]));

    [Fact]
    // Common practice, no source: two feet before one.
    public void PlacesOf_TwoFeetAndOne_TwoFeetFirstHoweverLong() =>
        Assert.Equal([2, 1], MechanicalLevelOrder.PlacesOf([Of("stork", 2), Of("two-feet", 30)]));

    [Fact]
    public void PlacesOf_LevelsWithoutAPosture_HaveNone() =>
        Assert.Equal([1, null, null], MechanicalLevelOrder.PlacesOf([Of("stork", 2), Of(null, 3), Of("no-such-posture", 3)]));

    [Theory]
    [InlineData(3, 5, false)]
    [InlineData(5, 3, true)]
    [InlineData(3, 3, false)]
    public void IsOtherwise_TwoHoldsOfOnePosture_WhereTheLongerStandsFirst(int firstS, int secondS, bool isOtherwise) =>
        Assert.Equal(isOtherwise, MechanicalLevelOrder.IsOtherwise([Of("stork", firstS), Of("stork", secondS)]));

    [Fact]
    public void IsOtherwise_NothingToCompare_No() => Assert.False(MechanicalLevelOrder.IsOtherwise([Of("stork", 2), Of(null, 3)]));

    private static Level Of(string? posture, int holdS) =>
        new() { Id = Guid.CreateVersion7(), Name = "As shown", Dose = new Dose(DoseKind.HoldS, holdS), Posture = posture };
}
