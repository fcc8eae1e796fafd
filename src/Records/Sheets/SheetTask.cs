using Slantwise.Records.Tasks;

namespace Slantwise.Records.Sheets;

/// <summary>A task as a sheet prints it: a copy, so that later edits of the task change no printed sheet.</summary>
public sealed record SheetTask
{
    /// <summary>The task it was copied from.</summary>
    public required Guid TaskId { get; init; }

    /// <summary>The task's name.</summary>
    public required string Name { get; init; }

    /// <summary>What the pupil sets out to do.</summary>
    public string Purpose { get; init; } = "";

    /// <summary>The cues to tick, 1 to 5.</summary>
    public IReadOnlyList<string> Cues { get; init; } = [];

    /// <summary>The usual caution; empty where there is none.</summary>
    public string Caution { get; init; } = "";

    /// <summary>The levels offered, 1 to 6, in the teacher's order from easier to harder.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];

    /// <summary>A sheet's copy of a task with some of its levels.</summary>
    /// <param name="task">The task to copy.</param>
    /// <param name="levels">The levels to offer, in the order to print them.</param>
    public static SheetTask Of(MovementTask task, IReadOnlyList<Level> levels) => new()
    {
        TaskId = task.Id,
        Name = task.Name,
        Purpose = task.Purpose,
        Cues = task.Cues,
        Caution = task.Caution,
        Levels = levels,
    };
}
