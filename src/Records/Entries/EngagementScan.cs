namespace Slantwise.Records.Entries;

/// <summary>One look around the hall: how many were doing what the task asks at that moment.</summary>
/// <param name="EngagedCount">Those practising, helping or observing as the task asks, 0 to <paramref name="PresentCount"/>.</param>
/// <param name="PresentCount">Those in the lesson at that moment, 1 to 200.</param>
public sealed record EngagementScan(int EngagedCount, int PresentCount) : EntryFact;
