using Slantwise.Records.Entries;

namespace Slantwise.Desk.Pages.Results;

/// <summary>What a slot should hold from now on.</summary>
/// <param name="Slot">The question answered.</param>
/// <param name="Fact">Its answer; none to take the answer back.</param>
public sealed record SlotChange(EntrySlot Slot, EntryFact? Fact);
