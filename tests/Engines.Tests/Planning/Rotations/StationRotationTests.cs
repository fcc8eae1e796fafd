using CsCheck;
using Slantwise.Engines.Planning.Rotations;

namespace Slantwise.Engines.Tests.Planning.Rotations;

public sealed class StationRotationTests
{
    [Fact]
    public void Of_ThreeGroups_IsTheLatinSquare()
    {
        var rotation = StationRotation.Of(3, 3);
        Assert.Equal([[0, 1, 2], [1, 2, 0], [2, 0, 1]], rotation.Stations);
        Assert.Equal(1, rotation.MostGroupsAtOnce);
    }

    [Fact]
    public void Of_AnyNumbers_EveryGroupVisitsEveryStationOnce() => Gen.Select(Gen.Int[1, 14], Gen.Int[1, 14]).Sample((groups, stations) =>
    {
        var rotation = StationRotation.Of(groups, stations);
        Assert.Equal(stations, rotation.Stations.Count);
        for (var g = 0; g < groups; g++)
        {
            var own = rotation.Stations.Select(round => round[g]).ToList();
            Assert.Equal(Enumerable.Range(0, stations), own.Order());
            Assert.All(own.Zip(own.Skip(1)), p => Assert.Equal((p.First + 1) % stations, p.Second));
        }
        foreach (var round in rotation.Stations)
        {
            var counts = round.GroupBy(s => s).Select(s => s.Count()).ToList();
            Assert.Equal(rotation.MostGroupsAtOnce, counts.Max());
            Assert.True(groups < stations || counts.Max() - counts.Min() <= 1);
        }
    });

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(101, 1)]
    public void Of_OutsideItsRange_Throws(int groups, int stations) => Assert.Throws<ArgumentOutOfRangeException>(() => StationRotation.Of(groups, stations));
}
