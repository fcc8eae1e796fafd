using CsCheck;
using Slantwise.Records.Halls;

namespace Slantwise.Records.Tests.Halls;

/// <summary>Halls by hand and at random.</summary>
internal static class SampleHall
{
    public static SchoolHall Of(double widthM, double depthM, params HallThing[] things) =>
        new() { SchoolId = new Guid(1, 0, 0, new byte[8]), Id = new Guid(2, 0, 0, new byte[8]), Name = "Hall", WidthM = widthM, DepthM = depthM, Things = things };

    public static HallLayout Layout(double clearM = 1, double wallClearM = 1, params LaidMat[] mats) =>
        new() { MatLengthM = 2, MatWidthM = 1, ClearM = clearM, WallClearM = wallClearM, Mats = mats };

    public static LaidMat Mat(double xM, double yM, bool isTurned = false, double fallM = 0, int? station = null) => new(xM, yM, isTurned, fallM, station);

    /// <summary>Any hall with things in it, and sizes and distances.</summary>
    public static readonly Gen<(SchoolHall Hall, HallLayout Layout)> Any =
        from width in Gen.Double[6, 30]
        from depth in Gen.Double[5, 20]
        from things in Gen.Select(Gen.Double[0, 0.9], Gen.Double[0, 0.9], Gen.Double[0.2, 4], Gen.Double[0.2, 3], Gen.Bool).Array[0, 4]
        from clear in Gen.Double[0, 2]
        from wallClear in Gen.Double[0, 2]
        from stations in Gen.Int[0, 4]
        from areApart in Gen.Frequency((5, Gen.Const(false)), (1, Gen.Const(true)))
        select (
            Of(width, depth, [.. things.Select((t, i) => new HallThing(i % 2 == 0 ? $"T{i}" : "", t.Item1 * width, t.Item2 * depth, t.Item3, t.Item4, t.Item5))]),
            Layout(clear, wallClear) with { AreCirclesApart = areApart, Stations = [.. Enumerable.Range(1, stations).Select(s => new HallStation($"S{s}", null))] });
}
