namespace Slantwise.Bench.Floor.Load;

/// <summary>Facts that go out together, and when they should.</summary>
internal sealed record PlannedBatch(double DueS, Tablet Tablet, IReadOnlyList<PlannedFact> Facts);
