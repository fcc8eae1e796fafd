using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Tests.Postures.Figures;

/// <summary>What of a scene is covered by bodies: the fills that have an edge, flattened to polygons; a plain second reading of the drawing.</summary>
internal sealed class Silhouette
{
    private const int PiecesPerCurve = 12;
    private readonly List<List<List<(double X, double Y)>>> _shapes = [];
    private readonly double _topMm;

    public Silhouette(Scene scene)
    {
        foreach (var outline in scene.Shapes.OfType<Outline>().Where(o => o.Inside is not null)) _shapes.Add(Flatten(outline));
        _topMm = _shapes.SelectMany(runs => runs).SelectMany(run => run).Min(p => p.Y);
    }

    /// <summary>Whether any shape covers a point: its runs wind around it.</summary>
    public bool Covers(double xMm, double yMm) => yMm >= _topMm && _shapes.Any(runs => runs.Sum(run => Winding(run, xMm, yMm)) != 0);

    private static List<List<(double X, double Y)>> Flatten(Outline outline)
    {
        var runs = new List<List<(double X, double Y)>>();
        foreach (var step in outline.Steps)
        {
            switch (step.Kind)
            {
                case OutlineStepKind.Move: runs.Add([(step.XMm, step.YMm)]); break;
                case OutlineStepKind.Line: runs[^1].Add((step.XMm, step.YMm)); break;
                case OutlineStepKind.Curve: Curve(runs[^1], step); break;
            }
        }
        return runs;
    }

    private static void Curve(List<(double X, double Y)> run, OutlineStep step)
    {
        var (x0, y0) = run[^1];
        for (var i = 1; i <= PiecesPerCurve; i++)
        {
            var t = i / (double)PiecesPerCurve;
            var u = 1 - t;
            double At(double a, double b, double c, double d) => u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
            run.Add((At(x0, step.C1XMm, step.C2XMm, step.XMm), At(y0, step.C1YMm, step.C2YMm, step.YMm)));
        }
    }

    private static int Winding(List<(double X, double Y)> run, double x, double y)
    {
        var winding = 0;
        for (var i = 0; i < run.Count; i++)
        {
            var (a, b) = (run[i], run[(i + 1) % run.Count]);
            if (a.Y <= y == b.Y <= y) continue;
            var crossing = a.X + (y - a.Y) / (b.Y - a.Y) * (b.X - a.X);
            if (crossing > x) winding += b.Y > a.Y ? 1 : -1;
        }
        return winding;
    }
}
