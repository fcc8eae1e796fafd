using Slantwise.Records.Entries;

namespace Slantwise.Desk.Pages.Results;

/// <summary>What writing into a grid did.</summary>
/// <param name="Cell">The cell written to; none for the whole sheet.</param>
/// <param name="Entries">The entries to append, in order; empty where nothing changed or nothing could be taken.</param>
public sealed record GridWrite(GridCell? Cell, IReadOnlyList<Entry> Entries);
