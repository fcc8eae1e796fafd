using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Contracts;

/// <summary>Entries a device delivers.</summary>
/// <param name="Entries">At most <see cref="MostEntryCount"/>, in the device's order. Empty is a sign of life.</param>
/// <param name="UnsentCount">How many are still waiting on the device, these included.</param>
public sealed record EntryBatch(IReadOnlyList<Entry> Entries, int UnsentCount)
{
    /// <summary>Entries in one batch, at most.</summary>
    public const int MostEntryCount = 200;
}
