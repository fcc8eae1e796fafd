using Slantwise.Records.Entries;

namespace Slantwise.Desk.Pages.Results;

/// <summary>One slot as it was before something was typed, and as it was after.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Before">What it held; none if it was empty.</param>
/// <param name="After">What it held afterwards; none if it was emptied.</param>
public sealed record UndoStep(EntrySlot Slot, EntryFact? Before, EntryFact? After);
