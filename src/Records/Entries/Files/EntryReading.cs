using Slantwise.Records.Checks;

namespace Slantwise.Records.Entries.Files;

/// <summary>What a file of entries says, compared with what is known already.</summary>
public sealed record EntryReading
{
    /// <summary>The entries to append, from the good rows only, in the order of the file. Empty where everything is known already.</summary>
    public IReadOnlyList<Entry> Entries { get; init; } = [];

    /// <summary>What is to be said, in the order of the file, then what is inconsistent on the sheets it fills.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Rows or lines with something in them, the header left out.</summary>
    public int RowCount { get; init; }

    /// <summary>Rows or lines with a refused finding; none of their entries is among <see cref="Entries"/>.</summary>
    public int RefusedRowCount { get; init; }

    /// <summary>Whether the file can be appended as it is. Where not, appending <see cref="Entries"/> skips the bad rows: only when the user says so.</summary>
    public bool CanAppend => !Findings.Any(f => f.IsRefused);
}
