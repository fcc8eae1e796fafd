namespace Slantwise.Engines.Drawing;

/// <summary>One line of text.</summary>
/// <param name="XMm">Where it is anchored, from the left.</param>
/// <param name="BaselineMm">Its baseline, from the top.</param>
/// <param name="Content">The text, on one line.</param>
/// <param name="SizePt">Type size in points of 1/72 inch, more than 0.</param>
/// <param name="Tone">Its colour.</param>
/// <param name="Anchor">Which end of the text stands at the anchor.</param>
/// <param name="Weight">How strong the type is.</param>
public sealed record Text(
    double XMm, double BaselineMm, string Content, double SizePt, Tone Tone,
    TextAnchor Anchor = TextAnchor.Start, TextWeight Weight = TextWeight.Regular) : Shape(Tone)
{
    /// <summary>White space added between its letters and words; none unless it is asked for.</summary>
    public TextSpacing Spacing { get; init; }
}
