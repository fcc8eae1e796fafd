using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Tasks;

/// <summary>A task while it is being typed.</summary>
/// <param name="schoolId">The owning school.</param>
/// <param name="id">The task's id.</param>
public sealed class TaskDraft(Guid schoolId, Guid id)
{
    /// <summary>The most cues a task has.</summary>
    public const int CueCount = 5;

    /// <summary>The task's id.</summary>
    public Guid Id => id;

    /// <summary>The name.</summary>
    public string Name { get; set; } = "";

    /// <summary>What the pupil sets out to do.</summary>
    public string Purpose { get; set; } = "";

    /// <summary>The usual caution.</summary>
    public string Caution { get; set; } = "";

    /// <summary>A line for each cue that could be typed; empty ones are left out.</summary>
    public string[] Cues { get; } = [.. Enumerable.Repeat("", CueCount)];

    /// <summary>The levels in the teacher's order.</summary>
    public List<LevelDraft> Levels { get; } = [];

    /// <summary>A draft of a task as it is kept.</summary>
    /// <param name="task">The task to start from.</param>
    public static TaskDraft Of(MovementTask task)
    {
        var draft = new TaskDraft(task.SchoolId, task.Id) { Name = task.Name, Purpose = task.Purpose, Caution = task.Caution };
        for (var i = 0; i < Math.Min(CueCount, task.Cues.Count); i++) draft.Cues[i] = task.Cues[i];
        draft.Levels.AddRange(task.Levels.Select(l => LevelDraft.Of(l, l.Id)));
        return draft;
    }

    /// <summary>The task as typed, whether or not it can be kept.</summary>
    public MovementTask ToTask() => new()
    {
        SchoolId = schoolId,
        Id = Id,
        Name = Name.Trim(),
        Purpose = Purpose.Trim(),
        Caution = Caution.Trim(),
        Cues = [.. Cues.Select(c => c.Trim()).Where(c => c.Length > 0)],
        Levels = [.. Levels.Select(l => l.ToLevel())],
    };
}
