namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A figure on the scale of log seconds, and its standard error.</summary>
/// <param name="ValueNats">The figure; e to it is seconds, or for a difference a ratio.</param>
/// <param name="ErrorNats">Its standard error, 0 or more.</param>
public readonly record struct LogScale(double ValueNats, double ErrorNats);
