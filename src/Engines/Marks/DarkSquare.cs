namespace Slantwise.Engines.Marks;

/// <summary>A blob that may be a black square seen from somewhere.</summary>
/// <param name="XPx">Its middle in the whole picture.</param>
/// <param name="YPx">Its middle in the whole picture.</param>
/// <param name="SidePx">The side of a square of its area, its hole counted in.</param>
/// <param name="IsHollow">Whether there is a hole in its middle.</param>
internal readonly record struct DarkSquare(double XPx, double YPx, double SidePx, bool IsHollow)
{
    private const int LeastCount = 10;
    private const double LongestFraction = 2.4;

    /// <summary>All in a picture.</summary>
    /// <param name="level">The picture at a size at which the smallest square has some ten pixels.</param>
    /// <param name="reachPx">How far its surroundings reach, in pixels of this size: more than a square's side.</param>
    public static List<DarkSquare> In(PictureLevel level, int reachPx)
    {
        var (image, found) = (level.Image, new List<DarkSquare>());
        var mask = LocalThreshold.Of(image, reachPx, .75);
        foreach (var blob in Blobs.Of(mask, image.WidthPx, image.HeightPx, LeastCount))
            if (Of(blob, mask, image.WidthPx, reachPx) is { } square)
                found.Add(new(square.XPx / level.Scale, square.YPx / level.Scale, square.SidePx / level.Scale, square.IsHollow));
        return found;
    }

    // An even blob that is the image of a square under a slanted view covers 12 √det of its spread; with a hole of half its side .6 of that.
    private static DarkSquare? Of(Blob blob, byte[] mask, int width, int reachPx)
    {
        if (blob.Count > 4.0 * reachPx * reachPx) return null;
        double xx = blob.SpreadXx, yy = blob.SpreadYy, xy = blob.SpreadXy;
        var det = xx * yy - xy * xy;
        if (det <= 0) return null;
        var (half, root) = ((xx + yy) / 2, Math.Sqrt((xx - yy) * (xx - yy) / 4 + xy * xy));
        if (half + root > LongestFraction * LongestFraction * (half - root)) return null;
        var cover = blob.Count / (12 * Math.Sqrt(det));
        if (cover is < .42 or > 1.16) return null;
        var isDarkInside = mask[(int)blob.Y * width + (int)blob.X] == 1;
        if (isDarkInside ? cover < .8 : cover > .85) return null;
        return new(blob.X, blob.Y, Math.Sqrt(isDarkInside ? blob.Count : blob.Count / .75), !isDarkInside);
    }
}
