namespace Slantwise.Engines.Drawing;

/// <summary>A run of straight and curved pieces.</summary>
/// <param name="Steps">At least two; the first moves.</param>
/// <param name="Tone">The colour of its fill, or of its stroke.</param>
/// <param name="StrokeMm">Width of the stroke, with round ends and joins; 0 to fill it.</param>
/// <param name="Inside">Of a stroke: the fill painted over its inner half, so that overlapping runs become one shape with one edge; none to leave it open.</param>
public sealed record Outline(IReadOnlyList<OutlineStep> Steps, Tone Tone, double StrokeMm = 0, Tone? Inside = null) : Shape(Tone);
