using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Scans.Pictures;

/// <summary>Which picture of a pupil's sheet: without the school, which every call names.</summary>
/// <param name="LessonId">The lesson.</param>
/// <param name="PupilId">The pupil.</param>
/// <param name="FieldKey">The item's key or the written field's.</param>
public sealed record PictureKey(Guid LessonId, Guid PupilId, string FieldKey)
{
    /// <summary>The picture an entry from paper can be traced to, where a person looked at it.</summary>
    /// <param name="entry">An entry.</param>
    /// <param name="sheet">The lesson's sheet.</param>
    /// <returns>None for an entry that no field of a pupil's sheet says. Whether the picture is kept is the store's to say.</returns>
    public static PictureKey? Of(Entry entry, SheetContent sheet)
    {
        if (entry is not { Source: EntrySource.Paper, PupilId: { } pupilId, SetNumber: { } set }) return null;
        var task = 0;
        for (var i = 0; i < sheet.Tasks.Count; i++)
        {
            if (sheet.Tasks[i].TaskId == entry.TaskId) task = i + 1;
        }
        SheetField? field = entry.Fact switch
        {
            Choice => new SheetField(SheetFieldKind.Level, task, set),
            Prediction => new SheetField(SheetFieldKind.Predicted, task, set),
            Trial => new SheetField(SheetFieldKind.Held, task, set, entry.TrialNumber ?? 0),
            CueTick tick => new SheetField(SheetFieldKind.Cue, task, set, tick.CueNumber),
            Decision => new SheetField(SheetFieldKind.Next, task, set),
            _ => null,
        };
        return task > 0 && field is { } known ? new PictureKey(entry.LessonId, pupilId, known.Key) : null;
    }
}
