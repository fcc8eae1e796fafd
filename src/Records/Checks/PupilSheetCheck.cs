using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Checks;

/// <summary>What does not fit together in what has been entered for one pupil. It points out and never blocks: pupils do write such things.</summary>
public static class PupilSheetCheck
{
    /// <summary>Looks over one pupil's whole sheet.</summary>
    /// <param name="record">The lesson, with every entry.</param>
    /// <param name="pupilId">The pupil.</param>
    /// <returns>Flagged findings by task, set and trial, each with its <see cref="Finding.OnSheet"/>. Empty where all fits, and where nothing was entered.</returns>
    public static IReadOnlyList<Finding> Of(LessonRecord record, Guid pupilId)
    {
        var own = record.Entries.Where(e => e.PupilId == pupilId).ToList();
        return Of(record, pupilId, new EntryLookup(record), EntryLog.Current(own));
    }

    internal static List<Finding> Of(LessonRecord record, Guid pupilId, EntryLookup lookup, IReadOnlyList<Entry> current)
    {
        var findings = new List<Finding>();
        if (record.Sheet is not { Content: var sheet }) return findings;
        var onSheet = current.Where(e => e.TaskId is not null && e.Fact is not (Visit or Note or TeacherCheck)).ToList();
        if (onSheet.Count > 0 && current.Any(e => e.Fact is Presence { IsPresent: false }))
        {
            findings.Add(Finding.Flagged("AbsentWithEntries", new SheetPlace(null, null)));
        }
        foreach (var task in sheet.Tasks)
        {
            var offered = lookup.Offered(pupilId, task);
            PupilSet? before = null;
            foreach (var set in onSheet.Where(e => e.TaskId == task.TaskId && e.SetNumber is not null).GroupBy(e => e.SetNumber!.Value).OrderBy(g => g.Key))
            {
                var now = PupilSet.Of(set.Key, task, set);
                PupilSetCheck.Add(findings, now, before, sheet, offered);
                before = now;
            }
        }
        return findings;
    }
}
