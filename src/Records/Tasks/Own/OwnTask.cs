using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Own;

/// <summary>One of a school's own tasks with its design, the two in step.</summary>
/// <param name="Task">The task as sheets take it.</param>
/// <param name="Design">Its factor grid, levels and words; none for a task that was typed without a grid.</param>
public sealed record OwnTask(MovementTask Task, TaskDesign? Design)
{
    /// <summary>One task with its design.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="schoolId">The school.</param>
    /// <param name="taskId">The task.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>None where the school has no such task.</returns>
    public static async Task<OwnTask?> FindAsync(IStore store, Guid schoolId, Guid taskId, CancellationToken cancel = default) =>
        await store.FindTaskAsync(schoolId, taskId, cancel) is { } task ? Of(task, (await store.FindTaskDesignAsync(schoolId, taskId, cancel))?.Design) : null;

    /// <summary>All tasks of a school with their designs, by name.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="schoolId">The school.</param>
    /// <param name="cancel">Gives up.</param>
    public static async Task<IReadOnlyList<OwnTask>> ListAsync(IStore store, Guid schoolId, CancellationToken cancel = default)
    {
        var designs = (await store.ListTaskDesignsAsync(schoolId, cancel)).ToDictionary(d => d.TaskId, d => d.Design);
        return [.. (await store.ListTasksAsync(schoolId, cancel)).Select(task => Of(task, designs.GetValueOrDefault(task.Id)))];
    }

    /// <summary>Keeps a task as it was edited, and its design in step with it.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="task">The task. Its design, where it has one, follows in the same commit.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="ArgumentException">A school that is not here.</exception>
    public static async Task SaveAsync(IStore store, MovementTask task, CancellationToken cancel = default)
    {
        var design = Of(task, (await store.FindTaskDesignAsync(task.SchoolId, task.Id, cancel))?.Design).Design;
        if (design is null) await store.SaveTaskAsync(task, cancel);
        else await SaveAsync(store, task, design, cancel);
    }

    /// <summary>Keeps a task with a design that fits it, or nothing.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="task">The task.</param>
    /// <param name="design">Its design, with the task's id.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="ArgumentException">A school that is not here; a design of another task.</exception>
    public static Task SaveAsync(IStore store, MovementTask task, TaskDesign design, CancellationToken cancel = default) =>
        store.SaveDesignedTaskAsync(task, new SchoolTaskDesign { SchoolId = task.SchoolId, TaskId = task.Id, Design = design }, cancel);

    /// <summary>The task as one file to read and to hand on: whole where it has a design, else the short form.</summary>
    /// <returns>The file's text, ending in a line feed. Reading it gives the same task.</returns>
    public string ToFile() => Design is { } design ? DesignFile.Write(design) : TaskFile.Write(Task);

    // A task that came from the library before designs were kept has the library's grid.
    private static OwnTask Of(MovementTask task, TaskDesign? kept) =>
        new(task, (kept ?? TaskLibrary.Find(task.Id)) is { } design ? DesignInStep.Of(design, task).Design : null);
}
