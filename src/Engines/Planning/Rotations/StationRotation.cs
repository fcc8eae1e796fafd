namespace Slantwise.Engines.Planning.Rotations;

/// <summary>Which group is at which station in which round: every group visits every station once.</summary>
/// <param name="Stations">For each round, in order, the station of each group, from 0.</param>
/// <param name="MostGroupsAtOnce">The most groups at one station in a round: 1 where stations are as many as groups or more.</param>
/// <remarks>
/// Each group goes on to the next station; where stations are as many as groups this is a Latin square. Every group so goes the same way round, and with a closed ring
/// of stations nobody crosses the hall. More groups than stations share them as evenly as can be.
/// </remarks>
public sealed record StationRotation(IReadOnlyList<IReadOnlyList<int>> Stations, int MostGroupsAtOnce)
{
    /// <summary>The rotation, in as many rounds as stations.</summary>
    /// <param name="groups">1 to 100.</param>
    /// <param name="stations">1 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Groups or stations not of 1 to 100.</exception>
    public static StationRotation Of(int groups, int stations)
    {
        if (groups is < 1 or > 100) throw new ArgumentOutOfRangeException(nameof(groups), groups, "There are 1 to 100 groups.");
        if (stations is < 1 or > 100) throw new ArgumentOutOfRangeException(nameof(stations), stations, "There are 1 to 100 stations.");
        var rounds = Enumerable.Range(0, stations).Select(r => (IReadOnlyList<int>)Enumerable.Range(0, groups).Select(g => (g + r) % stations).ToArray()).ToArray();
        return new(rounds, (groups + stations - 1) / stations);
    }
}
