namespace Slantwise.Records.Floor.Contracts;

/// <summary>A figure that levels of a bundle share.</summary>
/// <param name="Key">The posture's key; levels name it.</param>
/// <param name="Svg">The drawing, a whole SVG document.</param>
/// <param name="Description">It in words.</param>
public sealed record BundleFigure(string Key, string Svg, string Description);
