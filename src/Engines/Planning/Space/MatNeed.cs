namespace Slantwise.Engines.Planning.Space;

/// <summary>What every mat of a lesson measures and needs around it.</summary>
/// <param name="LengthM">Its long side, above 0, at most 20.</param>
/// <param name="WidthM">Its short side, above 0, not above the long one.</param>
/// <param name="ClearM">Free floor between two mats, 0 to 10.</param>
/// <param name="WallClearM">Free floor to walls and obstacles, 0 to 10.</param>
/// <param name="AreCirclesApart">Whether two falling circles may not overlap either: two who fall at once cannot meet. Needs much room.</param>
public readonly record struct MatNeed(double LengthM, double WidthM, double ClearM, double WallClearM, bool AreCirclesApart)
{
    /// <summary>Throws where something is outside its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A side or a distance outside its range.</exception>
    internal void Check()
    {
        if (!(WidthM > 0 && WidthM <= LengthM && LengthM <= 20)) throw new ArgumentOutOfRangeException(nameof(LengthM), LengthM, "A mat measures more than 0 and at most 20 metres, its long side first.");
        if (!(ClearM is >= 0 and <= 10)) throw new ArgumentOutOfRangeException(nameof(ClearM), ClearM, "Free floor is 0 to 10 metres.");
        if (!(WallClearM is >= 0 and <= 10)) throw new ArgumentOutOfRangeException(nameof(WallClearM), WallClearM, "Free floor is 0 to 10 metres.");
    }
}
