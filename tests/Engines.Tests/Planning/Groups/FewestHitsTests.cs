using System.Numerics;
using CsCheck;
using Slantwise.Engines.Planning.Groups;

namespace Slantwise.Engines.Tests.Planning.Groups;

public sealed class FewestHitsTests
{
    [Fact]
    public void Of_OneWayOfThreeAndOneOfOne_TakesTheShorter() => Assert.Equal([5], FewestHits.Of([[[5], [1, 2, 3]]]));

    [Fact]
    public void Of_AnyConflicts_AgreesWithAllSetsOfNumbersTriedOut() => Gen.Int[1, 511].Array[1, 4].Array[0, 7].Sample(codes =>
    {
        // A way is a set of the numbers 0 to 8, here as bits; so is every choice.
        var conflicts = codes.Select(ways => (IReadOnlyList<int[]>)ways.Select(w => Enumerable.Range(0, 9).Where(n => (w >> n & 1) == 1).ToArray()).ToArray()).ToArray();
        var found = FewestHits.Of(conflicts);
        Assert.True(conflicts.All(ways => ways.Any(way => way.All(found.Contains))));
        var fewest = Enumerable.Range(0, 512).Where(choice => codes.All(ways => ways.Any(w => (choice & w) == w))).Min(choice => BitOperations.PopCount((uint)choice));
        Assert.Equal(fewest, found.Count);
        Assert.Equal(found.Count, found.Distinct().Count());
    });
}
