namespace Slantwise.Engines.Marks;

/// <summary>What the grey of paper is everywhere, as if nothing stood on it.</summary>
/// <remarks>
/// Source: [Serra1982] closing: the lightest near each place, then the darkest of those. What is narrower than the square vanishes; the edge of a
/// wide shadow stays where it is, so that it is part of the paper and not of a mark.
/// </remarks>
internal sealed class PaperWhite
{
    private const double LeastPxPerMm = 2.6;
    private const double BeyondMarkMm = 3;
    private readonly PictureLevel _level;

    private PaperWhite(PictureLevel level) => _level = level;

    public static PaperWhite Of(PictureLevels levels, SheetLayout layout, double pxPerMm)
    {
        var level = levels.With(pxPerMm, LeastPxPerMm);
        var image = level.Image;
        var widestMm = layout.Fields.Count == 0 ? 6 : layout.Fields.Max(f => Math.Min(f.WidthMm, f.HeightMm));
        var reach = (int)Math.Ceiling((widestMm + BeyondMarkMm) / 2 * pxPerMm * level.Scale);
        reach = Math.Min(reach, Math.Min(image.WidthPx, image.HeightPx) / 2);
        var light = SlidingGreys.Lightest(image.Values, image.WidthPx, image.HeightPx, reach);
        var closed = SlidingGreys.Darkest(light, image.WidthPx, image.HeightPx, reach);
        return new(new(image with { Values = closed }, (int)Math.Round(-Math.Log2(level.Scale))));
    }

    public double At(double xPx, double yPx) => _level.At(xPx, yPx);

    public PictureLevel Level => _level;
}
