namespace Slantwise.Engines.Statistics;

/// <summary>How much of a set succeeded, coarsely enough to stand beside a decision.</summary>
public enum SuccessBand
{
    /// <summary>Fewer than 3 trials: no evidence.</summary>
    TooFew = 0,

    /// <summary>Below 60 in 100.</summary>
    Low = 1,

    /// <summary>From 60 to below 80 in 100; also 3 of 3 and 4 of 4, which are too short to be called high.</summary>
    Middle = 2,

    /// <summary>80 in 100 or more, of at least 5 trials.</summary>
    High = 3,
}
