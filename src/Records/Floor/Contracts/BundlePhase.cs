using Slantwise.Records.Lessons;

namespace Slantwise.Records.Floor.Contracts;

/// <summary>A planned block of the lesson.</summary>
/// <param name="Phase">What most pupils do in it.</param>
/// <param name="DurationMin">How long, in whole minutes.</param>
/// <param name="Note">What happens, in the teacher's words; may be empty.</param>
public sealed record BundlePhase(PhaseKind Phase, int DurationMin, string Note);
