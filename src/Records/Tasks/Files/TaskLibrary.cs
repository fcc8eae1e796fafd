using System.Globalization;
using System.Text;

namespace Slantwise.Records.Tasks.Files;

/// <summary>The tasks that come with the program, in every language we speak. They are inside it, so no folder has to be found.</summary>
public static class TaskLibrary
{
    private const string Root = "content/";
    private const string Folder = "/tasks/";

    /// <summary>The languages there are tasks in, two letters each, English first.</summary>
    public static IReadOnlyList<string> Languages { get; } = Resources()
        .Select(name => name[Root.Length..name.IndexOf(Folder, StringComparison.Ordinal)])
        .Distinct()
        .OrderBy(language => language == "en" ? "" : language, StringComparer.Ordinal)
        .ToList();

    /// <summary>The library in a language; English where there is no translation.</summary>
    /// <param name="language">The pupils' language.</param>
    /// <param name="schoolId">The school that will own the tasks.</param>
    /// <returns>By file name. A task has the same ids in every language, so changing language changes words only.</returns>
    public static IReadOnlyList<TaskReading> Read(CultureInfo language, Guid schoolId) =>
        Texts(language).Select(file => TaskFile.Read(file.Key, file.Value, schoolId)).ToList();

    /// <summary>The library's files in a language: name and text, by name.</summary>
    /// <param name="language">The language; English where there is no translation.</param>
    public static IReadOnlyDictionary<string, string> Texts(CultureInfo language)
    {
        var folder = Languages.Contains(language.TwoLetterISOLanguageName) ? language.TwoLetterISOLanguageName : "en";
        var prefix = Root + folder + Folder;
        var texts = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var resource in Resources().Where(name => name.StartsWith(prefix, StringComparison.Ordinal)))
        {
            using var stream = typeof(TaskLibrary).Assembly.GetManifestResourceStream(resource)!;
            using var reader = new StreamReader(stream, Encoding.UTF8);
            texts[resource[prefix.Length..]] = reader.ReadToEnd();
        }
        return texts;
    }

    private static IEnumerable<string> Resources() => typeof(TaskLibrary).Assembly
        .GetManifestResourceNames()
        .Where(name => name.StartsWith(Root, StringComparison.Ordinal) && name.Contains(Folder, StringComparison.Ordinal));
}
