namespace Slantwise.Engines.Marks;

/// <summary>How far a place of the form lies from where a flat page would have it.</summary>
/// <param name="XMm">The place.</param>
/// <param name="YMm">The place.</param>
/// <param name="DxMm">To the right.</param>
/// <param name="DyMm">Down.</param>
/// <param name="SpreadMm">How exactly that is known, as a standard deviation.</param>
internal readonly record struct PlaceShift(double XMm, double YMm, double DxMm, double DyMm, double SpreadMm);
