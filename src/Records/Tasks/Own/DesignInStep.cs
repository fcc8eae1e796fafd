using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;

namespace Slantwise.Records.Tasks.Own;

/// <summary>A design that has followed its task after the task was edited by hand, and what no longer fits as it did.</summary>
/// <param name="Design">The design with the task's levels, in its order. Reading it as a task gives the edited one.</param>
/// <param name="Notes">What to look at, level by level; empty where everything has its place.</param>
public sealed record DesignInStep(TaskDesign Design, IReadOnlyList<Finding> Notes)
{
    /// <summary>Lets a design follow its task.</summary>
    /// <param name="design">As it was kept.</param>
    /// <param name="task">The task as edited, with the same id.</param>
    /// <returns>
    /// Levels keep their place on the grid by their id. A level that is new has none and stays; a dose that the grid lacks is added to it. Words are those
    /// of the task in the language it is written in; other languages keep theirs.
    /// </returns>
    /// <exception cref="ArgumentException">A task of another id.</exception>
    public static DesignInStep Of(TaskDesign design, MovementTask task)
    {
        if (design.Id != task.Id) throw new ArgumentException($"The design is of another task ({design.Id}) than {task.Id}.", nameof(design));
        var notes = new List<Finding>();
        var old = design.Levels.Select((level, i) => (level, i)).ToDictionary(l => l.level.Id, l => l.i);
        var language = LanguageOf(design, task);
        var followed = design with
        {
            Levels = [.. task.Levels.Select(level => (old.TryGetValue(level.Id, out var i) ? design.Levels[i] : new DesignedLevel { Id = level.Id, Dose = level.Dose }) with
            {
                Dose = level.Dose, Demands = level.Demands, Posture = level.Posture,
            })],
            Words = design.Words.ToDictionary(
                words => words.Key,
                words => Follow(words.Value, task, [.. task.Levels.Select(level => words.Key != language && old.TryGetValue(level.Id, out var i) ? words.Value.Levels[i] : level.Name)], words.Key == language)),
        };
        for (var i = 0; i < task.Levels.Count; i++)
        {
            if (!followed.HasDose(task.Levels[i].Dose)) notes.Add(Finding.Flagged("GridDoseAdded", i + 1, task.Levels[i].Dose.Amount));
            followed = GridEdit.WithDose(followed, task.Levels[i].Dose);
        }
        for (var i = 0; i < task.Levels.Count; i++)
        {
            if (!followed.IsOnGrid(followed.Levels[i])) notes.Add(Finding.Flagged("GridLevelOff", i + 1, task.Levels[i].Name));
        }
        return new DesignInStep(followed, notes);
    }

    /// <summary>The language of a design's words that a task is written in.</summary>
    /// <param name="design">The design.</param>
    /// <param name="task">The task, perhaps edited since.</param>
    /// <returns>The one with most of the task's words; English, then any, where none has one. Empty for a design without words.</returns>
    public static string LanguageOf(TaskDesign design, MovementTask task) => design.Words.Values
        .OrderByDescending(words => AlikeCount(design, words, task))
        .ThenBy(words => words.Language == "en" ? "" : words.Language, StringComparer.Ordinal)
        .FirstOrDefault()?.Language ?? "";

    private static int AlikeCount(TaskDesign design, TaskWords words, MovementTask task)
    {
        var names = design.Levels.Zip(words.Levels).ToDictionary(pair => pair.First.Id, pair => pair.Second);
        return (words.Name == task.Name ? 1 : 0) + (words.Purpose == task.Purpose ? 1 : 0) + words.Cues.Intersect(task.Cues).Count()
            + task.Levels.Count(level => names.TryGetValue(level.Id, out var name) && name == level.Name);
    }

    private static TaskWords Follow(TaskWords words, MovementTask task, IReadOnlyList<string> levels, bool isTheTasks) => isTheTasks
        ? words with { Levels = levels, Name = task.Name, Purpose = task.Purpose, Cues = task.Cues, Caution = task.Caution }
        : words with { Levels = levels };
}
