namespace Slantwise.Engines.Marks;

/// <summary>A black square to find a form by.</summary>
/// <param name="XMm">Its middle.</param>
/// <param name="YMm">Its middle.</param>
/// <param name="SizeMm">The length of its side.</param>
/// <param name="IsHollow">
/// Whether a white square of half its side lies in its middle: the one at the top left, so that up is known without the code.
/// </param>
public sealed record Anchor(double XMm, double YMm, double SizeMm, bool IsHollow = false);
