using System.Globalization;
using System.Text;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Records.Tasks.Files;

/// <summary>The tasks that come with the program, in every language we speak. They are inside it, so no folder has to be found.</summary>
public static class TaskLibrary
{
    private const string Root = "content/";

    private static readonly Lazy<IReadOnlyList<DesignReading>> AllReadings = new(() => TaskFolder.Read(Texts()));

    /// <summary>The languages there are tasks in, two letters each, English first.</summary>
    public static IReadOnlyList<string> Languages { get; } = Texts().Keys
        .Where(path => path.Contains("/tasks/", StringComparison.Ordinal))
        .Select(path => path[..path.IndexOf('/', StringComparison.Ordinal)])
        .Distinct()
        .OrderBy(language => language == "en" ? "" : language, StringComparer.Ordinal)
        .ToList();

    /// <summary>Every task with its facts and its words, by file name.</summary>
    /// <exception cref="InvalidDataException">A file of the library cannot be read.</exception>
    public static IReadOnlyList<TaskDesign> Designs => [.. Readings.Select(reading => reading.Design
        ?? throw new InvalidDataException(reading.Findings[0].Sentence(CultureInfo.InvariantCulture)))];

    /// <summary>The library's design of a task; none where the task is not one of ours.</summary>
    /// <param name="taskId">The task.</param>
    public static TaskDesign? Find(Guid taskId) => Readings.FirstOrDefault(reading => reading.Design?.Id == taskId)?.Design;

    /// <summary>The library as it was read, by file name.</summary>
    public static IReadOnlyList<DesignReading> Readings => AllReadings.Value;

    /// <summary>The library in a language; English where there is no translation.</summary>
    /// <param name="language">The pupils' language.</param>
    /// <param name="schoolId">The school that will own the tasks.</param>
    /// <returns>By file name. A task has the same ids in every language, so changing language changes words only.</returns>
    public static IReadOnlyList<TaskReading> Read(CultureInfo language, Guid schoolId) =>
        [.. Readings.Select(reading => new TaskReading(
            Path.GetFileName(reading.FileName), reading.Design?.ToTask(language.TwoLetterISOLanguageName, schoolId), reading.Findings))];

    /// <summary>The library's files: text by path, <c>tasks/KEY.json</c> and <c>LANGUAGE/tasks/KEY.json</c>.</summary>
    public static IReadOnlyDictionary<string, string> Texts()
    {
        var texts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var resource in typeof(TaskLibrary).Assembly.GetManifestResourceNames().Where(IsOfATask))
        {
            using var stream = typeof(TaskLibrary).Assembly.GetManifestResourceStream(resource)!;
            using var reader = new StreamReader(stream, Encoding.UTF8);
            texts[resource[Root.Length..]] = reader.ReadToEnd();
        }
        return texts;
    }

    private static bool IsOfATask(string resource) =>
        resource.StartsWith(Root, StringComparison.Ordinal) && resource.Contains("/tasks/", StringComparison.Ordinal);
}
