namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A contact that two views know, as a rectangle on the floor with the line of gravity at 0, 0.</summary>
/// <param name="Part">The part of the body.</param>
/// <param name="Side">Its side.</param>
/// <param name="Near">The corner at the left end of the first view, nearer to its camera.</param>
/// <param name="Far">The corner at the right end of the first view, farther from its camera.</param>
public readonly record struct MarkedBox(ContactPart Part, Side Side, Point2 Near, Point2 Far)
{
    /// <summary>Where it carries.</summary>
    public Point2 Middle => .5 * (Near + Far);

    /// <summary>Its corners.</summary>
    public IReadOnlyList<Point2> Corners => [Near, new(Far.XH, Near.YH), Far, new(Near.XH, Far.YH)];
}
