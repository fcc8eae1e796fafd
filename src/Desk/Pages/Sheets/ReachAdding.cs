using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>A level that the teacher wants on the sheet after looking at whom it would include.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="Level">The level; of the task already, or a form of it with another dose.</param>
public sealed record ReachAdding(Guid TaskId, Level Level)
{
    /// <summary>The levels with the new one beside those of its form: before the first that asks for more, else behind the last.</summary>
    /// <param name="levels">In the teacher's order.</param>
    /// <param name="added">The new one.</param>
    /// <returns>Where to put it, from 0. At the end where no level has its form.</returns>
    public static int PlaceOf(IReadOnlyList<Level> levels, Level added)
    {
        bool IsForm(Level l) => l.Name == added.Name && l.Dose.Kind == added.Dose.Kind;
        // A smaller target asks for more.
        bool AsksMore(Level l) => added.Dose.Kind == DoseKind.TargetSizeM ? l.Dose.Amount < added.Dose.Amount : l.Dose.Amount > added.Dose.Amount;
        var places = Enumerable.Range(0, levels.Count).Where(i => IsForm(levels[i])).ToList();
        if (places.Count == 0) return levels.Count;
        return places.Where(i => AsksMore(levels[i])).Select(i => (int?)i).FirstOrDefault() ?? places[^1] + 1;
    }
}
