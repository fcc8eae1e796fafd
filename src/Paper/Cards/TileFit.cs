namespace Slantwise.Paper.Cards;

/// <summary>How levels stand in a room.</summary>
/// <param name="PerRow">How many beside each other.</param>
/// <param name="TileMm">The width of each.</param>
/// <param name="SizePt">The size of their words.</param>
/// <param name="FigureMm">The height left for a figure; 0 where there is none.</param>
/// <param name="LeastMm">The height all rows need without figures.</param>
internal sealed record TileFit(int PerRow, double TileMm, double SizePt, double FigureMm, double LeastMm);
