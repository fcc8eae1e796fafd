using Slantwise.Desk.Words;
using Slantwise.Records.Postures;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Tasks;

/// <summary>The order that mechanics alone would give levels, as a sentence beside the teacher's own.</summary>
public static class MechanicsSentence
{
    /// <summary>The sentence.</summary>
    /// <param name="levels">In the teacher's order.</param>
    /// <returns>None where fewer than two levels show a posture.</returns>
    public static string? Of(IReadOnlyList<Level> levels)
    {
        var places = MechanicalLevelOrder.PlacesOf(levels);
        return places.Count(p => p is not null) > 1
            ? DeskWords.Say(MechanicalLevelOrder.IsOtherwise(levels) ? "MechanicsOtherwise" : "MechanicsAlike", string.Join(", ", ByPlace(places)))
            : null;
    }

    // The numbers of the levels, from the one with the most room for error; levels that are not told apart joined by a sign.
    private static IEnumerable<string> ByPlace(IReadOnlyList<int?> places) => places
        .Select((place, index) => (Place: place, Number: index + 1))
        .Where(level => level.Place is not null)
        .GroupBy(level => level.Place)
        .OrderBy(alike => alike.Key)
        .Select(alike => string.Join(" = ", alike.Select(level => level.Number)));
}
