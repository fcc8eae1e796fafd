namespace Slantwise.Engines.Marks;

/// <summary>A part of a form as a picture of its own, straightened.</summary>
public static class StraightPicture
{
    private const int SidePxAtMost = 8_000;

    /// <summary>The part between two edges each way.</summary>
    /// <param name="image">The picture the form was found in.</param>
    /// <param name="map">Where.</param>
    /// <param name="xMm">The part's left edge; may lie beyond the form's.</param>
    /// <param name="yMm">Its top edge.</param>
    /// <param name="widthMm">Its width, more than 0.</param>
    /// <param name="heightMm">Its height, more than 0.</param>
    /// <param name="pxPerMm">How large to make it, more than 0.</param>
    /// <returns>What lies outside of the picture is continued from its edge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side of less than one pixel or of more than 8,000.</exception>
    public static GreyImage Of(GreyImage image, PageMap map, double xMm, double yMm, double widthMm, double heightMm, double pxPerMm)
    {
        var (width, height) = (Side(widthMm, pxPerMm), Side(heightMm, pxPerMm));
        var values = new byte[width * height];
        var (start, end) = (map.At(xMm, yMm), map.At(xMm + widthMm, yMm + heightMm));
        var pxAPixel = double.Hypot(end.XPx - start.XPx, end.YPx - start.YPx) / double.Hypot(width, height);
        // A part that is made smaller takes the mean of several places a pixel, so that thin strokes stay.
        var fine = (int)Math.Clamp(Math.Ceiling(pxAPixel - .25), 1, 6);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var sum = 0.0;
                for (var k = 0; k < fine * fine; k++)
                {
                    var at = map.At(xMm + (x + (k % fine + .5) / fine) / pxPerMm, yMm + (y + (k / fine + .5) / fine) / pxPerMm);
                    sum += PictureLevel.Between(image, at.XPx - .5, at.YPx - .5);
                }
                values[y * width + x] = (byte)Math.Clamp(Math.Round(sum / (fine * fine)), 0, 255);
            }
        }
        return new(width, height, values);
    }

    private static int Side(double lengthMm, double pxPerMm)
    {
        var px = Math.Round(lengthMm * pxPerMm);
        return px is >= 1 and <= SidePxAtMost ? (int)px : throw new ArgumentOutOfRangeException(nameof(lengthMm), lengthMm, $"A picture's side is 1 to {SidePxAtMost} pixels, not {px}.");
    }
}
