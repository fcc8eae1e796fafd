namespace Slantwise.Surface.Tests.Marks.Forms;

/// <summary>What strokes are drawn with.</summary>
/// <param name="DarkFraction">Of the paper's light, how much a full stroke takes.</param>
/// <param name="GrainFraction">How much of that the paper's grain takes away again, here and there: pencil and crayon.</param>
/// <param name="SoftMm">Over which length the edge of a stroke fades.</param>
internal sealed record Ink(double DarkFraction, double GrainFraction = 0, double SoftMm = 0);
