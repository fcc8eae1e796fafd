using System.Globalization;
using Slantwise.Desk.Pages.Library;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Checks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Desk.Pages.Tasks;

/// <summary>A task's file, read and looked at before anything is added.</summary>
public sealed record TaskFileLook
{
    // A colleague's task may lean on tasks that only they have: that all are there is a rule for a folder.
    private const string OfLibraries = "DesignPrerequisiteUnknown";

    /// <summary>The file's name.</summary>
    public required string FileName { get; init; }

    /// <summary>The task as the school would keep it; none where the file cannot be read.</summary>
    public MovementTask? Task { get; init; }

    /// <summary>The whole task; none in the short form of the file.</summary>
    public LibraryEntry? Whole { get; init; }

    /// <summary>What there is to say, what refuses first.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The school's task with the same id; none if there is none.</summary>
    public MovementTask? Same { get; init; }

    /// <summary>What another task is called, of the school or of the library, that has a level with the id of one of these; none if there is none.</summary>
    public string? WithSameLevel { get; init; }

    /// <summary>Whether it can be added.</summary>
    public bool CanAdd => Task is not null && Same is null && WithSameLevel is null && !Findings.Any(f => f.IsRefused);

    /// <summary>Reads a file beside what the school has.</summary>
    /// <param name="fileName">What findings call it.</param>
    /// <param name="text">Its whole text.</param>
    /// <param name="schoolId">The school that would own the task.</param>
    /// <param name="language">The language to take of a file that holds several.</param>
    /// <param name="tasks">The school's tasks.</param>
    public static TaskFileLook Read(string fileName, string text, Guid schoolId, CultureInfo language, IReadOnlyList<MovementTask> tasks)
    {
        var reading = TaskFile.Read(fileName, text, schoolId, language.TwoLetterISOLanguageName);
        var look = new TaskFileLook { FileName = fileName, Findings = reading.Findings };
        if (reading.Task is not { } task) return look;
        var whole = DesignFile.Read(fileName, text);
        List<Finding> findings = [.. reading.Findings, .. FindingsOf(whole), .. TaskCheck.Of(task)];
        return look with
        {
            Task = task,
            Whole = whole.Design is { } design
                ? new LibraryEntry("", design, design.Words.GetValueOrDefault(language.TwoLetterISOLanguageName) ?? design.Words.GetValueOrDefault("en") ?? design.Words.Values.First())
                : null,
            Findings = [.. findings.OrderByDescending(f => f.IsRefused)],
            Same = tasks.FirstOrDefault(t => t.Id == task.Id),
            WithSameLevel = NameWithLevelOf(task, tasks, language),
        };
    }

    private static IEnumerable<Finding> FindingsOf(DesignReading whole) =>
        DesignCheck.Of([whole with { Findings = [] }]).Where(f => f.Key != OfLibraries);

    private static string? NameWithLevelOf(MovementTask task, IReadOnlyList<MovementTask> tasks, CultureInfo language)
    {
        var ids = task.Levels.Select(l => l.Id).ToHashSet();
        return tasks.FirstOrDefault(t => t.Id != task.Id && t.Levels.Any(l => ids.Contains(l.Id)))?.Name
            ?? LibraryShelf.Of(language).FirstOrDefault(e => e.Design.Id != task.Id && e.Design.Levels.Any(l => ids.Contains(l.Id)))?.Words.Name;
    }
}
