namespace Slantwise.Engines.Statistics.Holds;

/// <summary>One group beside what it would be if all groups were alike.</summary>
/// <param name="HoldCount">Its holds.</param>
/// <param name="FallenCount">Those that ended.</param>
/// <param name="ExpectedCount">How many would have ended: above those that did, the group holds longer than the others.</param>
public readonly record struct LogRankGroup(int HoldCount, int FallenCount, double ExpectedCount);
