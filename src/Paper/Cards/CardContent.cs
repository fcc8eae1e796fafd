using Slantwise.Paper.Sheets;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Cards;

/// <summary>What a card says. Levels have no numbers here: a pupil's own sheet may count other levels from 1, and a card on the wall must not show that.</summary>
/// <param name="Title">The task's name, or a heading.</param>
/// <param name="Purpose">What to set out to do; may be empty.</param>
/// <param name="Caution">The usual caution; empty where there is none.</param>
/// <param name="Levels">The levels side by side; none for a card without.</param>
/// <param name="Cues">The cues, numbered as on every sheet.</param>
internal sealed record CardContent(string Title, string Purpose, string Caution, IReadOnlyList<OfferedLevel>? Levels, IReadOnlyList<string> Cues)
{
    /// <summary>A task as the school's policy offers it to the class.</summary>
    public static CardContent Of(SheetTask task, LessonRecord record) =>
        new(task.Name, task.Purpose, task.Caution, OfferedLevel.Of(task, record, null), task.Cues);
}
