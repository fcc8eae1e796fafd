namespace Slantwise.Engines.Statistics.Reach;

/// <summary>What a sheet offers one pupil.</summary>
/// <param name="AllowedCount">Levels that are allowed for the pupil; with 0 the sheet offers nothing.</param>
/// <param name="IncludedFraction">The chance that some allowed level lies in the band.</param>
/// <param name="StretchedFraction">The chance that some allowed level is not yet certain: below the end of the band.</param>
public readonly record struct PupilReach(int AllowedCount, double IncludedFraction, double StretchedFraction);
