namespace Slantwise.Engines.Drawing.Figures;

/// <summary>Turns a head into a layer: egg, nose, hair, and of the face what can be seen.</summary>
/// <remarks>
/// Places on the head are given on a unit ball (face, left, crown) that the three half axes stretch to the egg; a place is seen where
/// its outward direction has something of the viewer's.
/// </remarks>
internal sealed class HeadLayer
{
    private readonly record struct Ball(double Face, double Left, double Crown)
    {
        public static Ball operator +(Ball a, Ball b) => new(a.Face + b.Face, a.Left + b.Left, a.Crown + b.Crown);

        public static Ball operator *(double factor, Ball a) => new(factor * a.Face, factor * a.Left, factor * a.Crown);

        public static double Dot(Ball a, Ball b) => a.Face * b.Face + a.Left * b.Left + a.Crown * b.Crown;

        public static Ball Cross(Ball a, Ball b) => new(
            a.Left * b.Crown - a.Crown * b.Left, a.Crown * b.Face - a.Face * b.Crown, a.Face * b.Left - a.Left * b.Face);

        public Ball Unit() => 1 / Math.Sqrt(Dot(this, this)) * this;
    }

    // The hair, two caps: one on top, tipped a little back, and one behind the ears.
    private static readonly (Ball Axis, double Cosine)[] Caps = [(new Ball(-.3, 0, .95).Unit(), .38), (new Ball(-.97, 0, .12).Unit(), .12)];
    private readonly FigureHead _head;
    private readonly Ball _viewer;

    private HeadLayer(FigureHead head)
    {
        _head = head;
        _viewer = new Ball(Towards(head.Face), Towards(head.Left), Towards(head.Crown)).Unit();
    }

    public static FigureLayer Of(FigureHead head, FigureInk ink, double depthMm, bool isOverArm) => new HeadLayer(head).Layer(ink, depthMm, isOverArm);

    public static FigureLayer Neck(FigureHead head, double statureMm)
    {
        // A neck stands out of a collar of its own depth, but never before the chin.
        var layer = new FigureLayer(Math.Min(head.Neck.Average(r => r.DepthMm), head.Middle.DepthMm) + .03 * statureMm);
        RoundHull.Add(layer.Whole, [.. head.Neck]);
        return layer;
    }

    private FigureLayer Layer(FigureInk ink, double depthMm, bool isOverArm)
    {
        var layer = new FigureLayer(depthMm);
        var egg = Egg();
        var (centre, a, b) = egg;
        layer.Whole.Ellipse(centre, a, b);
        var sizeMm = Math.Sqrt(Math.Abs(Flat.Cross(a, b)));
        var nose = At(new(1.03, 0, -.16));
        RoundHull.Add(layer.Whole, new Round(nose.X, nose.Y, .13 * sizeMm, 0), new Round(centre.X, centre.Y, .13 * sizeMm, 0));
        if (isOverArm) layer.Clear.Ellipse(centre, a, b);
        foreach (var (axis, cosine) in Caps)
        {
            var hair = new FigurePath();
            Cap(hair, axis, cosine);
            if (hair.IsEmpty) continue;
            layer.Fill(hair, FigureKit.Hair);
            // Joined to the edge of the head: two fills that only touch leave a hair's breadth of light between them.
            layer.Line(hair, FigureKit.Hair, .6 * ink.LineMm);
        }
        Face(layer, ink, sizeMm);
        return layer;
    }

    private void Face(FigureLayer layer, FigureInk ink, double sizeMm)
    {
        foreach (var left in (ReadOnlySpan<int>)[1, -1])
        {
            var eye = new Ball(.88, .46 * left, .1).Unit();
            if (Ball.Dot(eye, _viewer) > .22) layer.Fill(Dot(eye, .115 * sizeMm), Tone.Ink);
            var ear = new Ball(-.08, left, -.12).Unit();
            if (Ball.Dot(ear, _viewer) <= .3) continue;
            layer.Fill(Dot(ear, .2 * sizeMm), FigureKit.Skin);
            layer.Line(Dot(ear, .2 * sizeMm), Tone.Ink, .8 * ink.LineMm);
            if (Ball.Dot(ear, _viewer) < .75) continue;
            var corner = new FigurePath();
            var (lip, back) = (At(new Ball(.9, .12 * left, -.46).Unit()), At(new Ball(.74, .5 * left, -.4).Unit()));
            corner.MoveTo(lip.X, lip.Y);
            corner.LineTo(back.X, back.Y);
            layer.Line(corner, Tone.Ink, .8 * ink.LineMm);
        }
        if (Ball.Dot(new Ball(.87, 0, -.5).Unit(), _viewer) < .45) return;
        var mouth = new FigurePath();
        var (from, low, to) = (At(new Ball(.86, .34, -.4).Unit()), At(new Ball(.78, 0, -.64).Unit()), At(new Ball(.86, -.34, -.4).Unit()));
        mouth.MoveTo(from.X, from.Y);
        mouth.Arc(.5 * (from + to), .5 * (from - to), low - .5 * (from + to), 0, Math.PI);
        layer.Line(mouth, Tone.Ink, .8 * ink.LineMm);
    }

    private FigurePath Dot(Ball place, double radiusMm)
    {
        var path = new FigurePath();
        path.Ellipse(At(place), new(radiusMm, 0), new(0, radiusMm));
        return path;
    }

    // A cap of the ball as it is seen: bounded by its own circle and by the edge of what can be seen.
    private void Cap(FigurePath path, Ball axis, double cosine)
    {
        var towards = Ball.Dot(axis, _viewer);
        var across = Math.Sqrt(Math.Max(0, 1 - towards * towards));
        var radius = Math.Sqrt(1 - cosine * cosine);
        var limit = -cosine * towards / Math.Max(1e-9, radius * across);
        var aside = across < 1e-6 ? AnyAcross(axis) : Ball.Cross(_viewer, axis).Unit();
        var near = Ball.Cross(aside, axis);
        if (Ball.Dot(near, _viewer) < 0) near = -1 * near;
        if (limit >= 1)
        {
            if (towards > 0) Whole(path);
            return;
        }
        if (limit <= -1)
        {
            if (towards <= 0) Whole(path);
            path.Ellipse(At(cosine * axis), Out(radius * near), Out(radius * aside), isHole: towards <= 0);
            return;
        }
        var ownRad = Math.Acos(limit);
        var inside = Ball.Cross(aside, _viewer);
        if (Ball.Dot(inside, axis) < 0) inside = -1 * inside;
        var edgeRad = Math.Acos(Math.Clamp(cosine / Ball.Dot(inside, axis), -1, 1));
        var start = At(cosine * axis + radius * Math.Cos(-ownRad) * near + radius * Math.Sin(-ownRad) * aside);
        path.MoveTo(start.X, start.Y);
        path.Arc(At(cosine * axis), Out(radius * near), Out(radius * aside), -ownRad, ownRad);
        path.Arc(Flat.Of(_head.Middle), Out(inside), Out(aside), edgeRad, -edgeRad);
        path.Close();
    }

    private void Whole(FigurePath path)
    {
        var (centre, a, b) = Egg();
        path.Ellipse(centre, a, b);
    }

    // The outline of an egg seen from afar: the axes of the ellipse whose square is the sum of the squares of the half axes.
    private (Flat Centre, Flat A, Flat B) Egg()
    {
        var (f, l, c) = (_head.Face, _head.Left, _head.Crown);
        var xx = f.XMm * f.XMm + l.XMm * l.XMm + c.XMm * c.XMm;
        var xy = f.XMm * f.YMm + l.XMm * l.YMm + c.XMm * c.YMm;
        var yy = f.YMm * f.YMm + l.YMm * l.YMm + c.YMm * c.YMm;
        var x = Math.Sqrt(xx);
        return (Flat.Of(_head.Middle), new(x, xy / x), new(0, Math.Sqrt(Math.Max(0, yy - xy * xy / xx))));
    }

    private Flat At(Ball place) => Flat.Of(_head.Middle) + Out(place);

    private Flat Out(Ball v) => new(
        v.Face * _head.Face.XMm + v.Left * _head.Left.XMm + v.Crown * _head.Crown.XMm,
        v.Face * _head.Face.YMm + v.Left * _head.Left.YMm + v.Crown * _head.Crown.YMm);

    private static double Towards(FigureAxis axis) =>
        axis.DepthMm / (axis.XMm * axis.XMm + axis.YMm * axis.YMm + axis.DepthMm * axis.DepthMm);

    private static Ball AnyAcross(Ball axis) => Ball.Cross(axis, Math.Abs(axis.Left) < .9 ? new(0, 1, 0) : new(1, 0, 0)).Unit();
}
