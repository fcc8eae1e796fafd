namespace Slantwise.Engines.Marks;

/// <summary>A picture at one of its smaller sizes, asked at places of the whole picture.</summary>
/// <param name="image">The picture at this size.</param>
/// <param name="halvings">How often its sides were halved.</param>
internal sealed class PictureLevel(GreyImage image, int halvings)
{
    public GreyImage Image { get; } = image;

    /// <summary>Its pixels for one of the whole picture.</summary>
    public double Scale { get; } = 1.0 / (1 << halvings);

    /// <summary>The grey at a place of the whole picture, between pixels in proportion; beyond the edge as at the edge.</summary>
    public double At(double xPx, double yPx) => Between(Image, xPx * Scale - .5, yPx * Scale - .5);

    /// <summary>The grey between the middles of pixels, which have whole numbers here.</summary>
    public static float Between(GreyImage image, double x, double y)
    {
        var (right, bottom) = (image.WidthPx - 1, image.HeightPx - 1);
        // A place that is not a number or far outside is taken as the edge.
        x = x > 0 ? Math.Min(x, right) : 0;
        y = y > 0 ? Math.Min(y, bottom) : 0;
        var (left, top) = ((int)x, (int)y);
        var (dx, dy) = ((float)(x - left), (float)(y - top));
        var first = top * image.WidthPx + left;
        var (across, down) = (left < right ? 1 : 0, top < bottom ? image.WidthPx : 0);
        var values = image.Values;
        float a = values[first], b = values[first + across], c = values[first + down], d = values[first + down + across];
        var upper = a + dx * (b - a);
        return upper + dy * (c + dx * (d - c) - upper);
    }
}
