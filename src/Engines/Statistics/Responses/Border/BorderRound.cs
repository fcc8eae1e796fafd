namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>What one pass over the pupils tells about a border.</summary>
/// <param name="Point">The border, its information factored, and how likely it is.</param>
/// <param name="Gradient">Slope of the log joint by coefficient and residual; empty where the border is impossible.</param>
/// <param name="SpreadCross">Information shared by each of them with the logarithm of the spread of abilities, where that has a row; else empty.</param>
/// <param name="SpreadCurvature">Information of that logarithm itself; else 0.</param>
internal readonly record struct BorderRound(BorderPoint Point, double[] Gradient, double[] SpreadCross, double SpreadCurvature);
