namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>One end of what touches the floor: a point of the body that was marked already, or a place of its own.</summary>
/// <param name="Landmark">The point of the body; none for a place of its own.</param>
/// <param name="At">The place; not looked at where a point of the body is named.</param>
public readonly record struct ContactEnd(Landmark? Landmark, PointPx At)
{
    /// <summary>An end that was marked already as a point of the body, on the contact's own side.</summary>
    /// <param name="landmark">The point.</param>
    public static ContactEnd Of(Landmark landmark) => new(landmark, default);

    /// <summary>An end that was marked for itself, on the floor.</summary>
    /// <param name="at">The place.</param>
    public static ContactEnd Of(PointPx at) => new(null, at);
}
