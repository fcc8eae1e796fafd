namespace Slantwise.Engines.Planning.Blocks;

/// <summary>A block of a lesson.</summary>
/// <param name="Category">What most pupils do in it.</param>
/// <param name="PlannedS">How long it is planned, above 0, at most 4 hours.</param>
/// <param name="WaitingFraction">The share of an activity block in which a pupil only waits, 0 to 1: from <see cref="Practice.PracticeOutlook"/>; 0 elsewhere.</param>
public readonly record struct PlannedBlock(TimeCategory Category, double PlannedS, double WaitingFraction = 0);
