namespace Slantwise.Engines.Marks;

/// <summary>Where a form's code is printed, its quiet zone not counted.</summary>
/// <param name="XMm">Its left edge.</param>
/// <param name="YMm">Its top edge.</param>
/// <param name="SizeMm">The length of its side.</param>
public sealed record CodePlace(double XMm, double YMm, double SizeMm);
