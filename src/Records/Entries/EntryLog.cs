namespace Slantwise.Records.Entries;

/// <summary>Reads an append-only log of entries as what holds now.</summary>
/// <remarks>
/// An entry without a receipt stands where the clock of its device puts it. The floor's own reading (src/Floor/src/lesson/log.ts) is held to this one by the cases in
/// src/Floor/tests/log-cases.json; there, where such entries are the device's own and on their way, they come last, as they will once they are received.
/// </remarks>
public static class EntryLog
{
    /// <summary>The entries that hold: superseded ones and withdrawals left out, the last word where two devices wrote about one thing.</summary>
    /// <param name="entries">Any number, any order, each id once.</param>
    /// <returns>In the order received, then by device and its own sequence. Empty for an empty log.</returns>
    public static IReadOnlyList<Entry> Current(IEnumerable<Entry> entries)
    {
        var all = InOrder(entries);
        var superseded = all.Where(e => e.SupersedesId is not null).Select(e => e.SupersedesId!.Value).ToHashSet();
        var last = new Dictionary<EntrySlot, Entry>();
        var current = new List<Entry>();
        foreach (var entry in all.Where(e => !superseded.Contains(e.Id) && e.Fact is not Withdrawal))
        {
            if (IsEvent(entry.Fact)) current.Add(entry);
            else last[EntrySlot.Of(entry)] = entry;
        }
        current.AddRange(last.Values);
        return InOrder(current);
    }

    /// <summary>Whether a fact is an event (a visit, a phase mark, a look around the hall, a note): not the answer to one question, so each one counts.</summary>
    /// <param name="fact">Any fact.</param>
    public static bool IsEvent(EntryFact fact) => fact is Visit or PhaseMark or EngagementScan or Note;

    private static List<Entry> InOrder(IEnumerable<Entry> entries) => entries
        .OrderBy(e => e.ReceivedAt ?? e.MadeAt)
        .ThenBy(e => e.DeviceId, StringComparer.Ordinal)
        .ThenBy(e => e.DeviceSequence)
        .ThenBy(e => e.Id)
        .ToList();
}
