namespace Slantwise.Engines.Drawing;

/// <summary>A drawing in millimetres, written to SVG for screens and to PDF for paper.</summary>
/// <param name="WidthMm">More than 0; x runs from 0 at the left to this.</param>
/// <param name="HeightMm">More than 0; y runs from 0 at the top to this.</param>
/// <param name="Shapes">Drawn in order, later ones over earlier ones.</param>
/// <param name="Description">What it shows, one sentence for those who do not see it; empty only where a text beside it says the same.</param>
public sealed record Scene(double WidthMm, double HeightMm, IReadOnlyList<Shape> Shapes, string Description);
