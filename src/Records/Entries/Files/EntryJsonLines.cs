using System.Text;
using System.Text.Json;
using Slantwise.Records.Checks;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Entries.Files;

/// <summary>Reads and writes entries one a line. They keep their ids, so that taking a line twice changes nothing.</summary>
internal static class EntryJsonLines
{
    public static EntryReading Read(string name, string text, LessonRecord record)
    {
        var lookup = new EntryLookup(record);
        var known = record.Entries.ToDictionary(e => e.Id);
        var findings = new List<Finding>();
        var entries = new List<Entry>();
        var (rowCount, refusedCount, lineNumber) = (0, 0, 0);
        foreach (var line in text.AsSpan().TrimStart('\uFEFF').EnumerateLines())
        {
            lineNumber++;
            if (line.IsWhiteSpace()) continue;
            rowCount++;
            var place = new FilePlace(name, lineNumber);
            var entry = Parsed(line, place, findings);
            if (entry is null)
            {
                refusedCount++;
                continue;
            }
            if (known.TryGetValue(entry.Id, out var before))
            {
                if (Told(before) == Told(entry)) continue;
                findings.Add(Finding.Refused("EntryIdTaken", place, entry.Id));
                refusedCount++;
                continue;
            }
            var about = lookup.Check(entry, place, isFromFile: true);
            findings.AddRange(about);
            if (about.Exists(f => f.IsRefused))
            {
                refusedCount++;
                continue;
            }
            known.Add(entry.Id, entry);
            lookup.Learn(entry);
            entries.Add(entry);
        }
        if (rowCount == 0) findings.Add(Finding.Refused("FileEmpty", new FilePlace(name)));
        findings.AddRange(EntryReadings.Inconsistencies(record, entries, lookup));
        return new EntryReading { Entries = entries, Findings = findings, RowCount = rowCount, RefusedRowCount = refusedCount };
    }

    public static string Write(IEnumerable<Entry> entries)
    {
        var text = new StringBuilder();
        foreach (var entry in entries) text.Append(JsonSerializer.Serialize(entry, EntryJson.Options)).Append('\n');
        return text.ToString();
    }

    // What a device said; when a store received it is the store's own.
    private static Entry Told(Entry entry) => entry with { ReceivedAt = null };

    private static Entry? Parsed(ReadOnlySpan<char> line, FilePlace place, List<Finding> findings)
    {
        try
        {
            if (JsonSerializer.Deserialize<Entry>(line, EntryJson.Options) is { } entry) return Told(entry);
            findings.Add(Finding.Refused("JsonLineUnreadable", place));
        }
        catch (JsonException e)
        {
            var path = e.Path is { Length: > 2 } found ? found[2..] : null;
            findings.Add(Finding.Refused("JsonLineUnreadable", place with { Column = path is null ? null : TextCheck.Visible(path) }));
        }
        catch (NotSupportedException)
        {
            // What the serializer says of a fact without a kind.
            findings.Add(Finding.Refused("JsonLineUnreadable", place with { Column = "fact.kind" }));
        }
        return null;
    }
}
