using System.Text.Json;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>A sheet while it is being made.</summary>
/// <param name="sheet">The sheet as it is kept, or a new one.</param>
/// <param name="tasks">The school's tasks.</param>
public sealed class SheetDraft(Sheet sheet, IReadOnlyList<MovementTask> tasks)
{
    /// <summary>The sheet's id.</summary>
    public Guid Id => sheet.Id;

    /// <summary>The name in the teacher's list; the heading stands in for an empty one.</summary>
    public string Name { get; set; } = sheet.Name;

    /// <summary>The heading the pupil reads.</summary>
    public string Title { get; set; } = sheet.Draft.Title;

    /// <summary>Sets a task.</summary>
    public int SetCount { get; set; } = sheet.Draft.SetCount;

    /// <summary>Trials a set.</summary>
    public int TrialCount { get; set; } = sheet.Draft.TrialCount;

    /// <summary>What the pupil predicts.</summary>
    public PredictionKind Predicts { get; set; } = sheet.Draft.Predicts;

    /// <summary>The tasks in the order to print them.</summary>
    public List<TaskPick> Tasks { get; } =
        [.. sheet.Draft.Tasks.Select(t => TaskPick.Of(t, tasks.FirstOrDefault(m => m.Id == t.TaskId)))];

    /// <summary>The content as it would be printed.</summary>
    public SheetContent ToContent() => new()
    {
        Title = Title.Trim(),
        Tasks = [.. Tasks.Select(t => t.ToSheetTask())],
        SetCount = SetCount,
        TrialCount = TrialCount,
        Predicts = Predicts,
    };

    /// <summary>The sheet to save.</summary>
    public Sheet ToSheet() => sheet with
    {
        Name = string.IsNullOrWhiteSpace(Name) ? Title.Trim() : Name.Trim(),
        Draft = ToContent(),
    };

    /// <summary>Whether two contents would print the same sheet.</summary>
    public static bool AreAlike(SheetContent one, SheetContent other) =>
        JsonSerializer.Serialize(one) == JsonSerializer.Serialize(other);
}
