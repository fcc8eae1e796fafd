using Slantwise.Engines.Mechanics;

namespace Slantwise.Records.Postures;

/// <summary>A side of the base with its name; short sides of one name are taken together, the nearest of them counts.</summary>
/// <param name="Name">Over what it would tip: "the fingertips".</param>
/// <param name="Edge">The side.</param>
/// <param name="IsWeakest">Whether it would tip over this one first.</param>
public sealed record NamedSide(string Name, TippingEdge Edge, bool IsWeakest);
