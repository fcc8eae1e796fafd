namespace Slantwise.Engines.Marks;

/// <summary>What every field of one form looks like, before anything is decided.</summary>
/// <param name="Fault">Why nothing is said; then there are no fields.</param>
/// <param name="Fields">Traits a field, in the layout's order.</param>
/// <param name="Map">Where the form lies in the picture; none where it was not found.</param>
public sealed record FormTraits(PageFault Fault, IReadOnlyList<MarkTraits> Fields, PageMap? Map);
