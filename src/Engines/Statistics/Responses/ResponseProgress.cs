namespace Slantwise.Engines.Statistics.Responses;

/// <summary>How far a fit is.</summary>
/// <param name="DoneFraction">0 to 1, an estimate: the number of rounds is not known before.</param>
public readonly record struct ResponseProgress(double DoneFraction);
