using System.Globalization;
using Slantwise.Records;
using Slantwise.Records.Tasks.Own;

namespace Slantwise.Desk.Pages.Library;

/// <summary>A school's own tasks that have a design, as pages show them beside those of the library.</summary>
public static class OwnShelf
{
    /// <summary>Every own task with a design.</summary>
    /// <param name="store">Where the records are.</param>
    /// <param name="schoolId">The school.</param>
    /// <param name="language">The reader's; the task's own where its design does not speak it.</param>
    /// <returns>By name. One that came from the library has the library's id.</returns>
    public static async Task<IReadOnlyList<LibraryEntry>> LoadAsync(IStore store, Guid schoolId, CultureInfo language) =>
        [.. (await OwnTask.ListAsync(store, schoolId)).Select(own => Of(own, language)).OfType<LibraryEntry>()];

    /// <summary>One own task.</summary>
    /// <param name="own">The task.</param>
    /// <param name="language">The reader's language.</param>
    /// <returns>None where it has no design, or one without words.</returns>
    public static LibraryEntry? Of(OwnTask own, CultureInfo language) => own.Design is { Words.Count: > 0 } design
        ? new LibraryEntry(own.Task.Id.ToString(), design, design.Words.GetValueOrDefault(language.TwoLetterISOLanguageName) ?? design.Words[DesignInStep.LanguageOf(design, own.Task)]) { IsOwn = true }
        : null;
}
