namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>One end of the base in a view, and how far the line of gravity is from it.</summary>
/// <param name="Part">The part of the body that is the end.</param>
/// <param name="Side">Its side.</param>
/// <param name="Landmark">The point of the body that was marked there; none for a place of its own.</param>
/// <param name="AtPx">Where it is on the picture.</param>
/// <param name="MarginH">Distance of the line of gravity inside this end, in statures; less than 0 beyond it.</param>
/// <param name="MarginSdH">How far that may be off by clicking, by guessed points and by the camera's tilt, as a standard deviation.</param>
/// <param name="TippingRad">How far the body may tilt this way before it tips over the end; less than 0 where it has.</param>
public sealed record MarkedEnd(
    ContactPart Part, Side Side, Landmark? Landmark, PointPx AtPx, double MarginH, double MarginSdH, double TippingRad);
