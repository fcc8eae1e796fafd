using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Postures;

/// <summary>The order of levels that mechanics alone would give: a hypothesis beside the teacher's, for levels that show a posture.</summary>
/// <remarks>
/// Postures are ordered by their room for error (<see cref="MechanicalOrder"/>); among levels that share a place the longer hold is the
/// harder. It knows nothing of strength, suppleness, fear or practice.
/// </remarks>
public static class MechanicalLevelOrder
{
    /// <summary>Each level's place, 1 for the one that mechanics alone calls the easiest.</summary>
    /// <param name="levels">Any number, in any order.</param>
    /// <returns>
    /// One place a level, in the order given; levels that are not told apart share the smaller number. None for a level without a posture of the
    /// library, or with one of two bodies.
    /// </returns>
    public static IReadOnlyList<int?> PlacesOf(IReadOnlyList<Level> levels)
    {
        var shown = levels.Select((level, index) => (Index: index, Posture: level.Posture is { } key ? PostureLibrary.Find(key) : null, level.Dose))
            .Where(l => l.Posture is not null).ToList();
        var ofPostures = MechanicalOrder.PlacesOf([.. shown.Select(l => l.Posture!)]);
        var ordered = shown.Select((level, i) => (level.Index, Place: ofPostures[i], HoldS: level.Dose.Kind == DoseKind.HoldS ? level.Dose.Amount : 0))
            .Where(l => l.Place is not null)
            .OrderBy(l => l.Place).ThenBy(l => l.HoldS).ToList();

        var places = new int?[levels.Count];
        for (var at = 0; at < ordered.Count; at++)
        {
            var isAlike = at > 0 && ordered[at].Place == ordered[at - 1].Place && ordered[at].HoldS == ordered[at - 1].HoldS;
            places[ordered[at].Index] = isAlike ? places[ordered[at - 1].Index] : at + 1;
        }
        return places;
    }

    /// <summary>Whether mechanics alone would order the levels otherwise than they stand.</summary>
    /// <param name="levels">In the teacher's order.</param>
    /// <returns>False where fewer than two levels have a place.</returns>
    public static bool IsOtherwise(IReadOnlyList<Level> levels)
    {
        var places = PlacesOf(levels).OfType<int>().ToList();
        return places.Zip(places.Skip(1)).Any(pair => pair.First > pair.Second);
    }
}
