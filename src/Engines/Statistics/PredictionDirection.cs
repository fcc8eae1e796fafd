namespace Slantwise.Engines.Statistics;

/// <summary>On which side of the results predictions lie on the whole.</summary>
public enum PredictionDirection
{
    /// <summary>Within the tolerance of the results.</summary>
    Close = 0,

    /// <summary>More was predicted than came.</summary>
    Over = 1,

    /// <summary>Less was predicted than came.</summary>
    Under = 2,
}
