using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Postures.Figures;

/// <summary>A drawn posture and where its points came to lie.</summary>
/// <param name="Scene">The drawing.</param>
/// <param name="Frame">From the floor's frame to the drawing and back.</param>
public sealed record Figure(Scene Scene, FigureFrame Frame);
