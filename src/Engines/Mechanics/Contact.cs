namespace Slantwise.Engines.Mechanics;

/// <summary>A part of the body that should touch the floor.</summary>
/// <param name="Part">The part.</param>
/// <param name="Side">Left or right for a paired part, else Middle.</param>
public readonly record struct Contact(ContactPart Part, Side Side);
