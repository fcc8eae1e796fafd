using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class Pcg32Tests
{
    // Source: [ONeill2014] reference implementation, printed by its pcg32-demo for state 42 and sequence 54, round 1.
    private static readonly uint[] PublishedBits = [0xa15c02b7, 0x7b47f409, 0xba1d3330, 0x83d2f293, 0xbfa4784b, 0xcbed606e];
    private const string PublishedCoins = "HHTTTHTHHHTHTTTHHHHHTTTHHHTHTHTHTTHTTTHHHHHHTTTTHHTTTTTHTTTTTTTHT";
    private const string PublishedRolls = "3 4 1 1 2 2 3 2 4 3 2 4 3 3 5 2 3 1 3 1 5 1 4 1 5 6 4 6 6 2 6 3 3";

    [Fact]
    public void Next_PublishedSeed_GivesThePublishedNumbers()
    {
        var generator = new Pcg32(42, 54);
        Assert.Equal(PublishedBits, Enumerable.Range(0, 6).Select(_ => generator.Next()));
        Assert.Equal(PublishedCoins, string.Concat(Enumerable.Range(0, 65).Select(_ => generator.NextBelow(2) == 1 ? 'H' : 'T')));
        Assert.Equal(PublishedRolls, string.Join(' ', Enumerable.Range(0, 33).Select(_ => generator.NextBelow(6) + 1)));
    }
}
