namespace Slantwise.Engines.Mechanics;

/// <summary>A turn in space, as the three axes it turns x, y and z into.</summary>
/// <param name="X">Where the front axis goes.</param>
/// <param name="Y">Where the left axis goes.</param>
/// <param name="Z">Where the up axis goes.</param>
public readonly record struct Rotation(Point3 X, Point3 Y, Point3 Z)
{
    /// <summary>No turn.</summary>
    public static Rotation None => new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>A right-handed turn about an axis.</summary>
    /// <param name="axis">The axis, of any length but 0.</param>
    /// <param name="angleRad">How far, any sign.</param>
    /// <remarks>The formula of Rodrigues. Source: [Winter2009] ch. 7.</remarks>
    public static Rotation About(Point3 axis, double angleRad)
    {
        var unit = 1 / axis.LengthH * axis;
        var (sine, cosine) = Math.SinCos(angleRad);
        Point3 Turned(Point3 v) => cosine * v + sine * Point3.Cross(unit, v) + ((1 - cosine) * Point3.Dot(unit, v)) * unit;
        return new Rotation(Turned(new(1, 0, 0)), Turned(new(0, 1, 0)), Turned(new(0, 0, 1)));
    }

    /// <summary>A turn about the left axis that takes up to the front: a bow.</summary>
    /// <param name="angleRad">How far, any sign.</param>
    public static Rotation Bow(double angleRad)
    {
        var (sine, cosine) = Math.SinCos(angleRad);
        return new Rotation(new(cosine, 0, -sine), new(0, 1, 0), new(sine, 0, cosine));
    }

    /// <summary>A turn about the front axis that takes up to the left: a lean.</summary>
    /// <param name="angleRad">How far, any sign.</param>
    public static Rotation Lean(double angleRad)
    {
        var (sine, cosine) = Math.SinCos(angleRad);
        return new Rotation(new(1, 0, 0), new(0, cosine, -sine), new(0, sine, cosine));
    }

    /// <summary>A turn about the up axis that takes the front to the left.</summary>
    /// <param name="angleRad">How far, any sign.</param>
    public static Rotation Turn(double angleRad)
    {
        var (sine, cosine) = Math.SinCos(angleRad);
        return new Rotation(new(cosine, sine, 0), new(-sine, cosine, 0), new(0, 0, 1));
    }

    /// <summary>A vector turned.</summary>
    /// <param name="vector">In the frame before the turn.</param>
    public Point3 Of(Point3 vector) => vector.XH * X + vector.YH * Y + vector.ZH * Z;

    /// <summary>The turn back.</summary>
    public Rotation Inverse() => new(new(X.XH, Y.XH, Z.XH), new(X.YH, Y.YH, Z.YH), new(X.ZH, Y.ZH, Z.ZH));

    /// <summary>The turn that does the right one first, then the left one.</summary>
    public static Rotation operator *(Rotation outer, Rotation inner) => new(outer.Of(inner.X), outer.Of(inner.Y), outer.Of(inner.Z));
}
