namespace Slantwise.Engines.Statistics;

/// <summary>Where a pupil decided to go after a set.</summary>
public enum DecisionDirection
{
    /// <summary>The same level again.</summary>
    Same = 1,

    /// <summary>A harder level.</summary>
    Harder = 2,

    /// <summary>An easier level.</summary>
    Easier = 3,
}
