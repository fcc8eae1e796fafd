namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>One click: a point of the body and where it is on the picture.</summary>
/// <param name="Landmark">Which point.</param>
/// <param name="Side">Left or right for a paired one; Middle where one mark stands for both, as in a view straight from the side.</param>
/// <param name="At">Where it was marked. The same point marked again is averaged.</param>
public readonly record struct MarkedPoint(Landmark Landmark, Side Side, PointPx At)
{
    /// <summary>Whether a body has two of a point.</summary>
    /// <param name="landmark">The point.</param>
    public static bool IsPaired(Landmark landmark) => landmark is not (Landmark.Crown or Landmark.Jaw or Landmark.Waist);
}
