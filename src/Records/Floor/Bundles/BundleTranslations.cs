using System.Collections.Frozen;
using System.Globalization;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Floor.Bundles;

/// <summary>A sheet's tasks in the library's other languages, as far as they are still the library's word for word.</summary>
internal static class BundleTranslations
{
    private static readonly Lazy<IReadOnlyList<LibraryLanguage>> Library = new(() => [.. TaskLibrary.Languages.Select(LibraryLanguage.Of)]);

    /// <summary>The translations of a bundle.</summary>
    /// <param name="printed">The tasks with every level of the sheet: they decide whether a task is the library's.</param>
    /// <param name="shown">The same tasks with the levels of the bundle: they are what is translated.</param>
    /// <param name="figures">The bundle's figures.</param>
    /// <param name="language">The language the figures' words are in already.</param>
    /// <returns>In the library's order of languages; a language without anything to say is left out.</returns>
    public static IReadOnlyList<BundleTranslation> Of(
        IReadOnlyList<SheetTask> printed, IReadOnlyList<SheetTask> shown, BundleFigures figures, CultureInfo language)
    {
        var translations = new List<BundleTranslation>();
        foreach (var target in Library.Value)
        {
            // A task may read alike in two languages; then it is not translated into either.
            var tasks = shown.Where((_, i) => !target.Says(printed[i]) && Library.Value.Any(l => l.Says(printed[i])))
                .Select(task => LessonBundles.TaskOf(target.Translated(task), figures))
                .ToList();
            var isOther = target.Culture.TwoLetterISOLanguageName != language.TwoLetterISOLanguageName;
            if (tasks.Count > 0 || (isOther && figures.IsAny))
                translations.Add(new BundleTranslation(target.Culture.TwoLetterISOLanguageName, tasks, figures.Descriptions(target.Culture)));
        }
        return translations;
    }

    private sealed record LibraryLanguage(CultureInfo Culture, FrozenDictionary<Guid, MovementTask> Tasks)
    {
        public static LibraryLanguage Of(string language)
        {
            var culture = CultureInfo.GetCultureInfo(language);
            return new(culture, TaskLibrary.Read(culture, Guid.Empty).Select(r => r.Task).OfType<MovementTask>().ToFrozenDictionary(t => t.Id));
        }

        // Whole or not at all: a sheet that is half translated would mix two languages in front of a child.
        public bool Says(SheetTask task) =>
            Tasks.TryGetValue(task.TaskId, out var own)
            && (task.Name, task.Purpose, task.Caution) == (own.Name, own.Purpose, own.Caution)
            && task.Cues.SequenceEqual(own.Cues)
            && task.Levels.All(level => own.Levels.Any(l => l.Id == level.Id && l.Name == level.Name));

        public SheetTask Translated(SheetTask task)
        {
            var own = Tasks[task.TaskId];
            // The words change; what makes a success stays what the sheet says.
            return task with
            {
                Name = own.Name, Purpose = own.Purpose, Caution = own.Caution, Cues = own.Cues,
                Levels = [.. task.Levels.Select(level => level with { Name = own.Levels.First(l => l.Id == level.Id).Name })],
            };
        }
    }
}
