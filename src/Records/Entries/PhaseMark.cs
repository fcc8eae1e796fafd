using Slantwise.Records.Lessons;

namespace Slantwise.Records.Entries;

/// <summary>The moment a phase of the lesson began.</summary>
/// <param name="Kind">The phase that began.</param>
public sealed record PhaseMark(PhaseKind Kind) : EntryFact;
