using CsCheck;
using Slantwise.Engines.Mechanics;

namespace Slantwise.Engines.Tests.Mechanics;

/// <summary>Random points on the floor, to a thousandth of a stature: finer than any contact is known.</summary>
internal static class Floor
{
    public static readonly Gen<double> CoordinateH = Gen.Int[-1000, 1000].Select(thousandths => thousandths / 1000.0);

    public static readonly Gen<Point2> Point = Gen.Select(CoordinateH, CoordinateH, (x, y) => new Point2(x, y));
}
