namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>How far a contact reaches along the floor of one view, seen from the line of gravity.</summary>
/// <param name="Part">The part of the body.</param>
/// <param name="Side">Its side; Middle for an unpaired part, or one mark for both.</param>
/// <param name="FirstH">Its left end, in statures to the right of the line of gravity.</param>
/// <param name="LastH">Its right end, in statures to the right of the line of gravity.</param>
public readonly record struct MarkedExtent(ContactPart Part, Side Side, double FirstH, double LastH);
