using Slantwise.Records.Checks;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Entries.Files;

internal static class EntryReadings
{
    /// <summary>What does not fit together on the sheets a file fills, once its entries are in.</summary>
    public static IReadOnlyList<Finding> Inconsistencies(LessonRecord record, IReadOnlyList<Entry> entries, EntryLookup lookup)
    {
        var touched = entries.Where(e => e.PupilId is not null).Select(e => e.PupilId!.Value).ToHashSet();
        if (touched.Count == 0) return [];
        var ofPupils = record.Entries.Concat(entries).Where(e => e.PupilId is not null).ToLookup(e => e.PupilId!.Value);
        var findings = new List<Finding>();
        foreach (var pupil in record.Pupils.Where(p => touched.Contains(p.Id)))
        {
            var current = EntryLog.Current(ofPupils[pupil.Id]);

            // The file's rows were flagged for levels that are not offered already, with their lines.
            foreach (var finding in PupilSheetCheck.Of(record, pupil.Id, lookup, current).Where(f => f.Key is not "ChoiceNotOffered"))
            {
                findings.Add(finding with { Arguments = finding.Arguments.Select(a => a is SheetPlace place ? place with { PupilLabel = pupil.Label } : a).ToArray() });
            }
        }
        return findings;
    }
}
