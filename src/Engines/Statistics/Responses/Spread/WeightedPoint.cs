using Slantwise.Engines.Statistics.Responses.Border;

namespace Slantwise.Engines.Statistics.Responses.Spread;

/// <summary>A pair of spreads with its border, and how much of the posterior it stands for.</summary>
internal readonly record struct WeightedPoint(BorderPoint Point, double Weight);
