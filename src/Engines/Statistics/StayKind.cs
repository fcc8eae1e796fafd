namespace Slantwise.Engines.Statistics;

/// <summary>At what kind of level a pupil stays.</summary>
public enum StayKind
{
    /// <summary>One that nearly always succeeds: 90 in 100 or more.</summary>
    NearlyAlways = 1,

    /// <summary>One that mostly fails: below 40 in 100.</summary>
    Seldom = 2,
}
