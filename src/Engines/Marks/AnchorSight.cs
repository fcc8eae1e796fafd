namespace Slantwise.Engines.Marks;

/// <summary>A black square as it was seen.</summary>
/// <param name="Anchor">The square.</param>
/// <param name="Middle">Its middle in the picture.</param>
/// <param name="White">The grey of paper beside it.</param>
/// <param name="Black">Its own grey.</param>
/// <param name="EdgeMm">How wide its edges are: what blur makes of them.</param>
internal readonly record struct AnchorSight(Anchor Anchor, PixelPoint Middle, double White, double Black, double EdgeMm)
{
    /// <summary>How much darker than paper it is, 0 to 1.</summary>
    public double ContrastFraction => White > 0 ? (White - Black) / White : 0;
}
