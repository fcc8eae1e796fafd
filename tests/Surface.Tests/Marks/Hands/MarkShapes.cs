using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>The strokes of a mark, before a hand's trembling.</summary>
internal static class MarkShapes
{
    public static List<Stroke> Of(MarkStyle style, MarkField field, Point offset, double penMm, Luck luck)
    {
        var middle = new Point(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2) + offset;
        var r = Math.Min(field.WidthMm, field.HeightMm) / 2;
        Point At(double x, double y) => middle + r * new Point(x + luck.Normal(.06), y + luck.Normal(.06));
        switch (style)
        {
            case MarkStyle.Tick: return [Tick(At, luck.Between(.65, 1), penMm)];
            case MarkStyle.LongTick: return [Tick(At, luck.Between(1.2, 1.9), penMm)];
            case MarkStyle.Cross:
                var s = luck.Between(.5, .9);
                return [Bowed(At(-s, -s), At(s, s), penMm, luck), Bowed(At(s, -s), At(-s, s), penMm, luck)];
            case MarkStyle.Disc: return [Zigzag(middle, r, -1, 1, penMm * .8, penMm, luck)];
            case MarkStyle.Half:
                var turned = luck.Index(4) * Math.PI / 2;
                return [Zigzag(middle, r, -.95, .05, penMm * .8, penMm, luck, turned)];
            case MarkStyle.Scribble: return [Zigzag(middle, r * luck.Between(.6, 1.1), -1, 1, Math.Max(penMm, r * .3), penMm, luck)];
            case MarkStyle.Dot:
                var dot = At(luck.Between(-.3, .3), luck.Between(-.3, .3));
                return [new([dot, dot + new Point(luck.Normal(.1), luck.Normal(.1))], Math.Max(penMm, luck.Between(.9, 1.6)))];
            case MarkStyle.Dash:
                var half = new Point(luck.Between(.55, 1.1), 0).Turned(luck.Pick([0, Math.PI / 4, Math.PI / 2, -Math.PI / 4]));
                return [Bowed(At(-half.XMm, -half.YMm), At(half.XMm, half.YMm), penMm, luck)];
            case MarkStyle.Ring:
                var around = luck.Between(1.1, 1.45);
                return [Stroke.Ellipse(middle, r * around * luck.Between(.95, 1.15), r * around, penMm, luck.Between(0, 6), luck.Between(5.7, 6.8))];
            default: return [];
        }
    }

    /// <summary>A line that is not quite straight, thinner where it leaves the paper.</summary>
    public static Stroke Bowed(Point from, Point to, double penMm, Luck luck)
    {
        var bow = luck.Normal(.05) * (to - from).Turned(Math.PI / 2);
        var points = new Point[7];
        for (var i = 0; i < points.Length; i++)
        {
            var t = i / (points.Length - 1.0);
            points[i] = from + t * (to - from) + 4 * t * (1 - t) * bow;
        }
        return new(points, penMm, penMm * luck.Between(.6, 1));
    }

    private static Stroke Tick(Func<double, double, Point> at, double size, double penMm) =>
        new([at(-.55 * size, -.05 * size), at(-.15 * size, .5 * size), at(.25 * size, -.1 * size), at(.7 * size, -.75 * size)], penMm, penMm * .8);

    // To and fro across a circle, from one share of its radius down to another.
    private static Stroke Zigzag(Point middle, double r, double from, double to, double stepMm, double penMm, Luck luck, double turnedRad = 0)
    {
        turnedRad += luck.Normal(.3);
        var points = new List<Point>();
        for (var y = from * r; y <= to * r; y += stepMm)
        {
            var half = Math.Sqrt(Math.Max(.04 * r * r, r * r - y * y)) * luck.Between(.85, 1.05);
            var side = points.Count % 4 == 0 ? -1 : 1;
            points.Add(middle + new Point(side * half, y).Turned(turnedRad));
            points.Add(middle + new Point(-side * half, y + stepMm * .3).Turned(turnedRad));
        }
        return new(points, penMm);
    }
}
