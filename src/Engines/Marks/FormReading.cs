namespace Slantwise.Engines.Marks;

/// <summary>What was read on one form.</summary>
/// <param name="Fault">Why nothing is said about it; then no field is.</param>
/// <param name="Fields">A reading a field, in the layout's order.</param>
/// <param name="Map">Where the form lies in the picture; none where it was not found.</param>
public sealed record FormReading(PageFault Fault, IReadOnlyList<FieldReading> Fields, PageMap? Map);
