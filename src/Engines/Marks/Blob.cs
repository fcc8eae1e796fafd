namespace Slantwise.Engines.Marks;

/// <summary>Dark pixels that touch: how many, their middle and how they spread about it.</summary>
internal readonly record struct Blob(double Count, double SumX, double SumY, double SumXx, double SumXy, double SumYy)
{
    public double X => SumX / Count;

    public double Y => SumY / Count;

    // A pixel is a square, not a point: a twelfth more to each side.
    public double SpreadXx => SumXx / Count - X * X + 1.0 / 12;

    public double SpreadYy => SumYy / Count - Y * Y + 1.0 / 12;

    public double SpreadXy => SumXy / Count - X * Y;

    public static Blob operator +(Blob a, Blob b) =>
        new(a.Count + b.Count, a.SumX + b.SumX, a.SumY + b.SumY, a.SumXx + b.SumXx, a.SumXy + b.SumXy, a.SumYy + b.SumYy);

    /// <summary>The pixels from one to before another in a row, places being the middles of pixels.</summary>
    public static Blob OfRun(int from, int to, int row)
    {
        double n = to - from, y = row + .5, mean = (from + to) / 2.0;
        // The spread of n neighbours about their middle is (n² - 1) / 12 each.
        var squares = n * mean * mean + n * (n * n - 1) / 12;
        return new(n, n * mean, n * y, squares, n * mean * y, n * y * y);
    }
}
