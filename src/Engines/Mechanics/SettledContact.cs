namespace Slantwise.Engines.Mechanics;

/// <summary>A contact after the body was put on the floor.</summary>
/// <param name="Contact">Which part.</param>
/// <param name="Middle">Where it carries, on the floor.</param>
/// <param name="Outline">Its print on the floor.</param>
/// <param name="HeightH">How far it hangs above the floor, or less than 0 how far it would sink in, in statures.</param>
public sealed record SettledContact(Contact Contact, Point2 Middle, IReadOnlyList<Point2> Outline, double HeightH);
