namespace Slantwise.Engines.Mechanics;

/// <summary>Where a segment is: its joint towards the body, and how it is turned.</summary>
/// <param name="Origin">The end nearer the pelvis; for the pelvis the middle of the hips.</param>
/// <param name="Turned">From the segment's own axes, those of upright standing, to the body's.</param>
public readonly record struct SegmentFrame(Point3 Origin, Rotation Turned)
{
    /// <summary>A point given in the segment's own axes.</summary>
    /// <param name="own">From the segment's origin, as in upright standing.</param>
    public Point3 At(Point3 own) => Origin + Turned.Of(own);
}
