namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>The two spreads: of abilities, and of what order and dose do not say about levels.</summary>
internal readonly record struct Scales(double Ability, double Residual);
