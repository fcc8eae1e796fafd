using System.Collections.Concurrent;
using System.Globalization;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Desk.Pages.Library;

/// <summary>The tasks that come with the program, as pages show them.</summary>
public static class LibraryShelf
{
    private static readonly ConcurrentDictionary<string, IReadOnlyList<LibraryEntry>> Shelves = [];

    /// <summary>Every task in a language.</summary>
    /// <param name="language">The reader's; English where the library does not speak it.</param>
    /// <returns>By pattern, then by name as the language sorts it.</returns>
    public static IReadOnlyList<LibraryEntry> Of(CultureInfo language) => Shelves.GetOrAdd(language.TwoLetterISOLanguageName, name =>
        [.. TaskLibrary.Readings.Zip(TaskLibrary.Designs, (reading, design) => new LibraryEntry(
                Path.GetFileNameWithoutExtension(reading.FileName), design, design.Words.GetValueOrDefault(name) ?? design.Words["en"]))
            .OrderBy(e => e.Design.Pattern)
            .ThenBy(e => e.Words.Name, StringComparer.Create(CultureInfo.GetCultureInfo(name), ignoreCase: true))]);

    /// <summary>A task by its name in addresses.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="language">The reader's language.</param>
    /// <returns>None where the library has no such task.</returns>
    public static LibraryEntry? Find(string key, CultureInfo language) => Of(language).FirstOrDefault(e => e.Key == key);

    /// <summary>A task by its id.</summary>
    /// <param name="id">The id, the same in every language and in a school's own copy.</param>
    /// <param name="language">The reader's language.</param>
    /// <returns>None where the library has no such task.</returns>
    public static LibraryEntry? Find(Guid id, CultureInfo language) => Of(language).FirstOrDefault(e => e.Design.Id == id);

    /// <summary>The tasks that come easier after a task.</summary>
    /// <param name="entry">A task of the library.</param>
    /// <param name="language">The reader's language.</param>
    public static IReadOnlyList<LibraryEntry> After(LibraryEntry entry, CultureInfo language) =>
        [.. Of(language).Where(e => e.Design.Prerequisites.Contains(entry.Design.Id))];
}
