namespace Slantwise.Engines.Planning.Space;

/// <summary>A hall: a rectangle with things in it.</summary>
/// <param name="WidthXM">From the left wall to the right one, above 0, at most 200.</param>
/// <param name="DepthYM">From the front wall to the back one, above 0, at most 200.</param>
/// <param name="Obstacles">Things in it, at most 200; may be empty.</param>
public sealed record Hall(double WidthXM, double DepthYM, IReadOnlyList<HallObstacle> Obstacles)
{
    /// <summary>Throws where something is outside its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A hall without a size, too many obstacles, or one without a size.</exception>
    internal void Check()
    {
        if (!(WidthXM is > 0 and <= 200)) throw new ArgumentOutOfRangeException(nameof(WidthXM), WidthXM, "A hall measures more than 0 and at most 200 metres.");
        if (!(DepthYM is > 0 and <= 200)) throw new ArgumentOutOfRangeException(nameof(DepthYM), DepthYM, "A hall measures more than 0 and at most 200 metres.");
        if (Obstacles.Count > 200) throw new ArgumentOutOfRangeException(nameof(Obstacles), Obstacles.Count, "At most 200 obstacles are looked at.");
        foreach (var (place, _) in Obstacles)
        {
            if (!(place is { WidthXM: > 0, DepthYM: > 0 } && double.IsFinite(place.LeftXM + place.FrontYM + place.WidthXM + place.DepthYM)))
                throw new ArgumentOutOfRangeException(nameof(Obstacles), place, "An obstacle has a place and measures more than 0 metres.");
        }
    }
}
