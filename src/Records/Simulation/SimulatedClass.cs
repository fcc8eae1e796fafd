using Slantwise.Records.Entries;

namespace Slantwise.Records.Simulation;

/// <summary>What a simulation gives: what the teacher would have, and what is true.</summary>
/// <param name="Plan">What it was made from.</param>
/// <param name="Entries">The entries of all lessons, in the order they were made, corrected ones included.</param>
/// <param name="Truth">What the entries do not say.</param>
public sealed record SimulatedClass(SimulationPlan Plan, IReadOnlyList<Entry> Entries, SimulationTruth Truth);
