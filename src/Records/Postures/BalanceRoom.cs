namespace Slantwise.Records.Postures;

/// <summary>How much room the line of gravity has before the body tips.</summary>
public enum BalanceRoom
{
    /// <summary>A finger's breadth at most.</summary>
    Hardly,

    /// <summary>A few fingers.</summary>
    Little,

    /// <summary>Less than a hand's length.</summary>
    Some,

    /// <summary>More.</summary>
    Plenty,
}
