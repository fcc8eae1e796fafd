namespace Slantwise.Engines.Mechanics;

/// <summary>On what the load shares rest.</summary>
public enum LoadBasis
{
    /// <summary>Statics alone decides: one contact, two in line with the centre of mass, or three.</summary>
    Statics,

    /// <summary>Four or more: equally stiff contacts on a rigid floor, an assumption; the bounds are statics alone.</summary>
    EqualStiffness,

    /// <summary>The line of gravity falls outside the contacts: no shares hold the body still.</summary>
    NotHeld,
}
