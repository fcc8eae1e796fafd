using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Checks;

/// <summary>Whether an entry can be appended, and what to point out.</summary>
/// <remarks>
/// Refused is what could never be read back as anything: a pupil, task, level or number the lesson does not have, a trial of more than ten minutes.
/// What may truly have happened is taken and flagged: a level that was not offered, a prediction above the number of trials typed as the pupil wrote it.
/// From a file such a prediction is refused, since no one is looking at the sheet and a shifted column is the likelier cause.
/// </remarks>
public static class EntryCheck
{
    /// <summary>Looks at an entry beside everything known about its lesson.</summary>
    /// <param name="entry">The entry, made but not appended. Its source says which way in it takes.</param>
    /// <param name="record">The lesson it is to be appended to.</param>
    /// <returns>Findings from the outermost part in. Empty where there is nothing to say.</returns>
    public static IReadOnlyList<Finding> Of(Entry entry, LessonRecord record)
    {
        var lookup = new EntryLookup(record);
        return lookup.Check(entry, lookup.PlaceOf(entry), entry.Source == EntrySource.File);
    }
}
