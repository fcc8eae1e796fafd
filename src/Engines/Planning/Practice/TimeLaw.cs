namespace Slantwise.Engines.Planning.Practice;

/// <summary>How times vary around their mean.</summary>
public enum TimeLaw
{
    /// <summary>Log-normal, with the spreads of the request.</summary>
    LogNormal = 1,

    /// <summary>Without a memory: the textbook queue. Real turns vary less; the spreads are not used.</summary>
    Exponential = 2,
}
