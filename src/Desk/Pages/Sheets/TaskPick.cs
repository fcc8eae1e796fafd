using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>A task on a sheet being made: the sheet's copy, and the task as it is now.</summary>
public sealed class TaskPick
{
    private SheetTask _copy;

    private TaskPick(SheetTask copy, MovementTask? task)
    {
        (_copy, Task) = (copy, task);
        Levels = [.. copy.Levels.Select(l => new LevelPick(l) { IsPicked = true }), .. Others(task).Select(l => new LevelPick(l))];
    }

    /// <summary>The task as it is now; none if it is no longer kept.</summary>
    public MovementTask? Task { get; private set; }

    /// <summary>The task's id.</summary>
    public Guid TaskId => _copy.TaskId;

    /// <summary>The name the sheet prints.</summary>
    public string Name => _copy.Name;

    /// <summary>The levels in the order to print them, those that are not picked among them.</summary>
    public List<LevelPick> Levels { get; }

    /// <summary>Whether the task was changed after the sheet took its copy.</summary>
    public bool IsBehind => Task is { } task && !AreAlike(ToSheetTask(), Refreshed(task));

    /// <summary>A task a sheet has already.</summary>
    /// <param name="copy">The sheet's copy.</param>
    /// <param name="task">The task as it is now; none if it is no longer kept.</param>
    public static TaskPick Of(SheetTask copy, MovementTask? task) => new(copy, task);

    /// <summary>A task put on a sheet with some of its levels.</summary>
    /// <param name="task">The task.</param>
    /// <param name="levels">The levels to pick at first.</param>
    public static TaskPick Of(MovementTask task, IReadOnlyList<Level> levels) => new(SheetTask.Of(task, levels), task);

    /// <summary>Takes the task's words and levels as they are now; what is picked stays picked.</summary>
    public void TakeOver()
    {
        if (Task is not { } task) return;
        _copy = Refreshed(task);
        foreach (var pick in Levels) pick.Level = task.Levels.FirstOrDefault(l => l.Id == pick.Level.Id) ?? pick.Level;
    }

    /// <summary>Puts a level on the sheet that the task has got just now.</summary>
    /// <param name="level">The new level.</param>
    /// <param name="task">The task with it; none if the task is no longer kept.</param>
    public void Put(Level level, MovementTask? task)
    {
        Task = task;
        Levels.Insert(ReachAdding.PlaceOf([.. Levels.Select(p => p.Level)], level), new LevelPick(level) { IsPicked = true });
    }

    /// <summary>The sheet's copy with the picked levels.</summary>
    public SheetTask ToSheetTask() => _copy with { Levels = [.. Levels.Where(p => p.IsPicked).Select(p => p.Level)] };

    private SheetTask Refreshed(MovementTask task) => SheetTask.Of(
        task,
        [.. Levels.Where(p => p.IsPicked).Select(p => task.Levels.FirstOrDefault(l => l.Id == p.Level.Id) ?? p.Level)]);

    private IEnumerable<Level> Others(MovementTask? task) =>
        task?.Levels.Where(l => _copy.Levels.All(c => c.Id != l.Id)) ?? [];

    private static bool AreAlike(SheetTask one, SheetTask other) => SheetDraft.AreAlike(
        new() { Title = "", Tasks = [one] }, new() { Title = "", Tasks = [other] });
}
