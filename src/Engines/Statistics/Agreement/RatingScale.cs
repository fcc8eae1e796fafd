namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>What the difference of two ratings means.</summary>
public enum RatingScale
{
    /// <summary>Only whether they differ.</summary>
    Nominal = 1,

    /// <summary>How many ratings lie between them.</summary>
    Ordinal = 2,

    /// <summary>Their difference.</summary>
    Interval = 3,

    /// <summary>Their difference against their sum: seconds, counts.</summary>
    Ratio = 4,
}
