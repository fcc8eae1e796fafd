using System.Text.Json.Serialization;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Entries;

/// <summary>The moment a phase of the lesson began.</summary>
/// <param name="Kind">The phase that began.</param>
// In JSON "kind" already says which fact it is.
public sealed record PhaseMark([property: JsonPropertyName("phase")] PhaseKind Kind) : EntryFact;
