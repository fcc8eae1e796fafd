namespace Slantwise.Engines.Statistics.Reach;

/// <summary>Whom a level is for.</summary>
/// <param name="PupilCount">The expected number of pupils for whom it lies in the band.</param>
/// <param name="NeededFraction">The chance that it lies in the band for at least one.</param>
public readonly record struct LevelReach(double PupilCount, double NeededFraction);
