namespace Slantwise.Engines.Drawing.Figures;

/// <summary>A point or vector of the drawing, in millimetres.</summary>
internal readonly record struct Flat(double X, double Y)
{
    public double Length => Math.Sqrt(X * X + Y * Y);

    public static Flat operator +(Flat a, Flat b) => new(a.X + b.X, a.Y + b.Y);

    public static Flat operator -(Flat a, Flat b) => new(a.X - b.X, a.Y - b.Y);

    public static Flat operator *(double factor, Flat a) => new(factor * a.X, factor * a.Y);

    public static double Cross(Flat a, Flat b) => a.X * b.Y - a.Y * b.X;

    public static double Dot(Flat a, Flat b) => a.X * b.X + a.Y * b.Y;

    public static Flat Of(Round round) => new(round.XMm, round.YMm);
}
