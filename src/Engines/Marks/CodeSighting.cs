namespace Slantwise.Engines.Marks;

/// <summary>Where a form's code was seen: a first idea of where the form lies and which way is up.</summary>
/// <param name="TopLeft">The middle of its finder pattern at the top left.</param>
/// <param name="TopRight">The middle of its finder pattern at the top right.</param>
/// <param name="BottomLeft">The middle of its finder pattern at the bottom left.</param>
/// <param name="FinderFraction">How far the middles of two finder patterns are apart, of the code's side.</param>
public sealed record CodeSighting(PixelPoint TopLeft, PixelPoint TopRight, PixelPoint BottomLeft, double FinderFraction);
