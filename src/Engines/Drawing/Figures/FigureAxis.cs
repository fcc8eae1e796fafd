namespace Slantwise.Engines.Drawing.Figures;

/// <summary>One half axis of the head as it is seen: from the middle to the skin.</summary>
/// <param name="XMm">To the right.</param>
/// <param name="YMm">Down.</param>
/// <param name="DepthMm">Towards the viewer.</param>
public readonly record struct FigureAxis(double XMm, double YMm, double DepthMm);
