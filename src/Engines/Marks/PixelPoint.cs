namespace Slantwise.Engines.Marks;

/// <summary>A place in a picture, in pixels from its top left corner; the middle of the first pixel is at .5, .5.</summary>
/// <param name="XPx">To the right.</param>
/// <param name="YPx">Down.</param>
public readonly record struct PixelPoint(double XPx, double YPx);
