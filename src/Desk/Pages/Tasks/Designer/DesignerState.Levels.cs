using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using Slantwise.Records.Tasks.Designs.Ladders;
using DesignWords = Slantwise.Records.Tasks.Designs.TaskWords;

namespace Slantwise.Desk.Pages.Tasks.Designer;

public sealed partial class DesignerState
{
    /// <summary>Takes the suggested levels as the task's own, in their order; levels that are not among them go.</summary>
    public void TakeAll() => Put([.. Rows.Select(row => (row.Proposed.IsKept ? row.Level : row.Level with { Id = newId() }, NamesOf(row)))]);

    /// <summary>Takes one suggested level beside those there are: before the first that the suggestion has after it, else behind all.</summary>
    /// <param name="row">The level. One that the task has already changes it.</param>
    public void Take(LadderRow row)
    {
        var own = OwnLevels();
        if (row.Proposed.IsKept)
        {
            Put([.. own.Select(l => l.Level.Id == row.Level.Id ? (row.Level, NamesOf(row)) : l)]);
            return;
        }
        var after = Rows.SkipWhile(r => r != row).Skip(1).Select(r => r.Level.Id).ToHashSet();
        var at = own.FindIndex(l => after.Contains(l.Level.Id));
        own.Insert(at < 0 ? own.Count : at, (row.Level with { Id = newId() }, NamesOf(row)));
        Put(own);
    }

    /// <summary>Takes a level of the suggestion with another dose, which the grid then has too.</summary>
    /// <param name="form">The level with its new dose; done as the suggested level of the same name.</param>
    public void TakeForm(Level form)
    {
        if (Rows.FirstOrDefault(r => r.Name == form.Name) is not { } like) return;
        var own = OwnLevels();
        var at = Sheets.ReachAdding.PlaceOf([.. own.Select(l => l.Level.Named(l.Names[language]))], form);
        own.Insert(at, (like.Level with { Id = newId(), Dose = form.Dose }, NamesOf(like)));
        Put(own, GridEdit.WithDose(Design, form.Dose));
    }

    /// <summary>Changes one of the task's levels.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <param name="level">The level with the same id.</param>
    public void Set(int index, DesignedLevel level) => Change(d => d with { Levels = [.. d.Levels.Select((l, i) => i == index ? level with { Demands = [.. level.Needs] } : l)] });

    /// <summary>Calls one of the task's levels something else.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <param name="name">What it is called.</param>
    public void Name(int index, string name) => Say(w => w with { Levels = [.. w.Levels.Select((n, i) => i == index ? name.Trim() : n)] });

    /// <summary>Moves a level up or down.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <param name="by">-1 or +1, never beyond the ends.</param>
    public void Move(int index, int by)
    {
        var own = OwnLevels();
        (own[index], own[index + by]) = (own[index + by], own[index]);
        Put(own);
    }

    /// <summary>Takes a level out.</summary>
    /// <param name="index">Its place, from 0.</param>
    public void Remove(int index)
    {
        var own = OwnLevels();
        own.RemoveAt(index);
        Put(own);
    }

    private List<(DesignedLevel Level, IReadOnlyDictionary<string, string> Names)> OwnLevels() =>
        [.. Design.Levels.Select((level, i) => (level, (IReadOnlyDictionary<string, string>)Design.Words.ToDictionary(w => w.Key, w => w.Value.Levels[i])))];

    // A name that was typed stands in the language it was typed in; the others say where the level stands in their own words.
    private Dictionary<string, string> NamesOf(LadderRow row) =>
        Design.Words.ToDictionary(w => w.Key, w => w.Key == language ? row.Name : LadderNames.Of(Design, row.Proposed.Level, w.Value));

    private void Put(IReadOnlyList<(DesignedLevel Level, IReadOnlyDictionary<string, string> Names)> levels, TaskDesign? grid = null) => Change(d => (grid ?? d) with
    {
        Levels = [.. levels.Select(l => l.Level)],
        Words = d.Words.ToDictionary(w => w.Key, w => w.Value with { Levels = [.. levels.Select(l => l.Names[w.Key])] }),
    });
}
