using System.Globalization;
using Slantwise.Desk.Pages.Library;
using Slantwise.Desk.Words;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Units;

/// <summary>The tasks a unit can be made of, the school's own before the library's, and what each is called.</summary>
public sealed class TaskShelf
{
    private readonly Dictionary<Guid, string> _names;

    private TaskShelf(IReadOnlyList<(Guid Id, string Name)> own, IReadOnlyList<(Guid Id, string Name)> library)
    {
        (Own, FromLibrary) = (own, library);
        _names = own.Concat(library).ToDictionary(t => t.Id, t => t.Name);
    }

    /// <summary>The school's tasks, by name.</summary>
    public IReadOnlyList<(Guid Id, string Name)> Own { get; }

    /// <summary>Those of the library that the school has no copy of, by name.</summary>
    public IReadOnlyList<(Guid Id, string Name)> FromLibrary { get; }

    /// <summary>The tasks there are.</summary>
    /// <param name="tasks">The school's.</param>
    /// <param name="language">The reader's language, for the library's names.</param>
    public static TaskShelf Of(IReadOnlyList<MovementTask> tasks, CultureInfo language)
    {
        var own = tasks.Select(t => (t.Id, t.Name)).ToList();
        var there = own.Select(t => t.Id).ToHashSet();
        var order = StringComparer.Create(language, ignoreCase: true);
        return new(own, [.. LibraryShelf.Of(language).Where(e => !there.Contains(e.Design.Id)).Select(e => (e.Design.Id, e.Words.Name)).OrderBy(t => t.Name, order)]);
    }

    /// <summary>What a task is called; a word for one that is no longer there.</summary>
    /// <param name="taskId">The task.</param>
    public string NameOf(Guid taskId) => _names.GetValueOrDefault(taskId) ?? PlannerWords.Say("TaskGone");
}
