namespace Slantwise.Engines.Marks;

/// <summary>A form that was found: its map, its anchors, and what their black and the outlines look like.</summary>
/// <param name="Map">From the form to the picture.</param>
/// <param name="Anchors">Those that were seen and fit.</param>
/// <param name="PxPerMm">In the middle of the form, of the whole picture.</param>
/// <param name="Level">The size of the picture at which fields are read.</param>
/// <param name="White">Paper everywhere.</param>
internal sealed record FormPlace(FormMap Map, IReadOnlyList<AnchorSight> Anchors, double PxPerMm, PictureLevel Level, PaperWhite White)
{
    /// <summary>The picture's blur as a standard deviation, from the widths of the largest anchors' edges.</summary>
    /// <remarks>From a quarter to three quarters of its rise a normal curve takes 1.35 standard deviations.</remarks>
    public double BlurMm { get; } = BlurOf(Anchors);

    /// <summary>A field's own outline against the map, in the layout's order; empty before outlines were looked for.</summary>
    public IReadOnlyList<OutlineSight> Outlines { get; init; } = [];

    /// <summary>Which of them agree with the map.</summary>
    public IReadOnlyList<bool> IsAgreed { get; init; } = [];

    private static double BlurOf(IReadOnlyList<AnchorSight> anchors)
    {
        if (anchors.Count == 0) return 0;
        var largest = anchors.Max(a => a.Anchor.SizeMm);
        var edges = anchors.Where(a => a.Anchor.SizeMm == largest).Select(a => a.EdgeMm).Order().ToArray();
        return edges[edges.Length / 2] / 1.35;
    }
}
