using System.Globalization;
using System.Text.Json;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Host.Sync;

/// <summary>A batch as it came: each entry is read by itself, so that one that cannot be read takes no other with it.</summary>
/// <param name="Entries">The entries, unread.</param>
/// <param name="UnsentCount">How many wait on the device.</param>
internal sealed record SyncBatch(IReadOnlyList<JsonElement> Entries, int UnsentCount)
{
    /// <summary>Reads the entries.</summary>
    /// <param name="language">The language of what is refused.</param>
    /// <returns>Those that can be read, and those that cannot.</returns>
    /// <exception cref="FloorRefusal">One of which not even the id can be read, or too many.</exception>
    public (EntryBatch Batch, IReadOnlyList<RefusedEntry> Unread) Read(CultureInfo language)
    {
        if (Entries.Count > EntryBatch.MostEntryCount) throw new FloorRefusal(FloorProblemKind.BatchTooLarge);
        var (entries, unread) = (new List<Entry>(), new List<RefusedEntry>());
        foreach (var element in Entries)
        {
            try
            {
                entries.Add(element.Deserialize<Entry>(EntryJson.Options) ?? throw new FloorRefusal(FloorProblemKind.BodyUnreadable));
            }
            catch (Exception failure) when (SyncBody.IsUnreadable(failure))
            {
                unread.Add(Unread(element, language));
            }
        }
        return (new EntryBatch(entries, UnsentCount), unread);
    }

    private static RefusedEntry Unread(JsonElement element, CultureInfo language)
    {
        if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty("id", out var id) || id.ValueKind != JsonValueKind.String || !id.TryGetGuid(out var entryId))
            throw new FloorRefusal(FloorProblemKind.BodyUnreadable);
        var finding = new Finding(FindingSeverity.Refused, "EntryUnreadable", new SheetPlace(null, null));
        return new RefusedEntry(entryId, finding.Key, finding.Sentence(language));
    }
}
