namespace Slantwise.Engines.Statistics.Holds;

/// <summary>The shape a curve of hold times is given.</summary>
public enum HoldLaw
{
    /// <summary>logit(share held) falls evenly with log time: the same curve as a pass-or-fail model with log target as its difficulty.</summary>
    LogLogistic = 1,

    /// <summary>log(−log(share held)) rises evenly with log time; for comparison.</summary>
    Weibull = 2,
}
