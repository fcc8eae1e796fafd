using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics;
using Slantwise.Records.Postures;
using Text = Slantwise.Engines.Drawing.Text;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>The base seen from above: prints, the area around them, the point under the centre of mass and the side it would tip over first.</summary>
public sealed class StudioPlan
{
    /// <summary>Width of the picture, in its own millimetres.</summary>
    public const double WidthMm = 110;

    /// <summary>Height of the picture.</summary>
    public const double HeightMm = 84;

    private const double FillFraction = .62;
    private const double LargestStatureMm = 190;
    private const double EdgeMm = 6;

    private double _statureMm;
    private double _originXMm, _originYMm;
    private Point2 _offset;
    private int _takenCount = -1;

    /// <summary>Where a place of the floor is drawn: the front is up, the performer's left is on the left.</summary>
    /// <param name="session">Whose floor.</param>
    /// <param name="place">In the settled posture's frame.</param>
    public (double XMm, double YMm) At(StudioSession session, Point2 place)
    {
        var at = place + (session.Offset - _offset);
        return (_originXMm - _statureMm * at.YH, _originYMm - _statureMm * at.XH);
    }

    /// <summary>Where a print is taken hold of: at the end that is farther from the centre of mass, so that its ring stays in sight.</summary>
    /// <param name="session">Whose floor.</param>
    /// <param name="contact">The print.</param>
    public (double XMm, double YMm) HandleAt(StudioSession session, SettledContact contact)
    {
        var (outline, centre) = (contact.Outline, session.Balance.Whole.Centre.OnFloor);
        var (front, back) = (.5 * (outline[0] + outline[7]), .5 * (outline[3] + outline[4]));
        var end = (front - centre).LengthH >= (back - centre).LengthH ? front : back;
        return At(session, contact.Middle + .5 * (end - contact.Middle));
    }

    /// <summary>The move on the floor that is drawn as a given one.</summary>
    /// <param name="rightMm">To the right.</param>
    /// <param name="downMm">Down.</param>
    public Point3 Move(double rightMm, double downMm) => new(-downMm / _statureMm, -rightMm / _statureMm, 0);

    /// <summary>Draws the plan.</summary>
    /// <param name="session">Whose base.</param>
    /// <param name="units">For the measure at its foot.</param>
    /// <param name="description">What a reader who does not see it is told.</param>
    /// <param name="culture">The reader's language.</param>
    public Scene Draw(StudioSession session, StudioUnits units, string description, CultureInfo culture)
    {
        if (_takenCount != session.TakenCount || (!session.IsDragging && !Fits(session))) Fit(session);
        var whole = session.Balance.Whole;
        var shapes = new List<Shape>();
        Spot Of(Point2 place)
        {
            var (xMm, yMm) = At(session, place);
            return new Spot(xMm, yMm);
        }
        if (whole.Base.Corners.Count >= 3) shapes.Add(Closed([.. whole.Base.Corners.Select(Of)]).Fill(Tone.AccentSoft));
        foreach (var contact in session.Settled.Bodies.SelectMany(b => b.Contacts)) shapes.Add(Closed([.. contact.Outline.Select(Of)]).Fill(Tone.Faint));
        foreach (var contact in session.Settled.Bodies.SelectMany(b => b.Contacts)) shapes.Add(Closed([.. contact.Outline.Select(Of)]).Stroke(.5, Tone.Muted));
        if (whole.Base.Corners.Count >= 3) shapes.Add(Closed([.. whole.Base.Corners.Select(Of)]).Stroke(.7, Tone.Accent));
        Weakest(shapes, whole, Of);
        var centre = Of(whole.Centre.OnFloor);
        var tone = whole.Margin.IsHeld ? Tone.Ink : Tone.Caution;
        shapes.Add(new Disc(centre.XMm, centre.YMm, 2.4, Tone.Ground));
        shapes.Add(new Disc(centre.XMm, centre.YMm, 2.4, tone, .9));
        shapes.Add(new Disc(centre.XMm, centre.YMm, .8, tone));
        if (!whole.Margin.IsHeld)
        {
            // Outside is told by a cross as well as by a colour.
            shapes.Add(new Line(centre.XMm - 3.4, centre.YMm - 3.4, centre.XMm + 3.4, centre.YMm + 3.4, .9, Tone.Caution));
            shapes.Add(new Line(centre.XMm - 3.4, centre.YMm + 3.4, centre.XMm + 3.4, centre.YMm - 3.4, .9, Tone.Caution));
        }
        Measure(shapes, units, culture);
        return new Scene(WidthMm, HeightMm, shapes, description);
    }

    // The side it would tip over first, drawn along the whole of it, and the way there.
    private static void Weakest(List<Shape> shapes, BodyBalance whole, Func<Point2, Spot> of)
    {
        if (whole.Margin.WeakestEdge < 0) return;
        var edge = whole.Margin.Edges[whole.Margin.WeakestEdge];
        var (from, to, centre) = (of(edge.From), of(edge.To), of(whole.Centre.OnFloor));
        shapes.Add(new Pen().MoveTo(from.XMm, from.YMm).LineTo(to.XMm, to.YMm).Stroke(1.8, Tone.Second));
        var along = edge.To - edge.From;
        var back = whole.Centre.OnFloor - edge.From;
        var atFraction = Math.Clamp((along.XH * back.XH + along.YH * back.YH) / (along.LengthH * along.LengthH), 0, 1);
        var near = of(edge.From + atFraction * along);
        shapes.Add(new Line(centre.XMm, centre.YMm, near.XMm, near.YMm, .6, Tone.Second, IsDashed: true));
    }

    private void Measure(List<Shape> shapes, StudioUnits units, CultureInfo culture)
    {
        var (lengthH, said) = units.StatureCm is { } cm ? (10 / cm, BalanceWords.Length(10 / cm, culture, cm)) : (.1, BalanceWords.Length(.1, culture));
        var (leftMm, yMm, longMm) = (EdgeMm, HeightMm - 4, lengthH * _statureMm);
        shapes.Add(new Line(leftMm, yMm, leftMm + longMm, yMm, .6, Tone.Muted));
        shapes.Add(new Line(leftMm, yMm - 1.2, leftMm, yMm + 1.2, .6, Tone.Muted));
        shapes.Add(new Line(leftMm + longMm, yMm - 1.2, leftMm + longMm, yMm + 1.2, .6, Tone.Muted));
        shapes.Add(new Text(leftMm + longMm + 2, yMm + 1.3, said, 10, Tone.Muted));
    }

    private void Fit(StudioSession session)
    {
        (_offset, _takenCount) = (session.Offset, session.TakenCount);
        var (least, most) = Bounds(session);
        var (wideH, highH) = (Math.Max(.05, most.YH - least.YH), Math.Max(.05, most.XH - least.XH));
        _statureMm = Math.Min(LargestStatureMm, FillFraction * Math.Min(WidthMm / wideH, HeightMm / highH));
        _originXMm = WidthMm / 2 + _statureMm * (least.YH + most.YH) / 2;
        _originYMm = .46 * HeightMm + _statureMm * (least.XH + most.XH) / 2;
    }

    private bool Fits(StudioSession session)
    {
        var (least, most) = Bounds(session);
        var ((rightMm, bottomMm), (leftMm, topMm)) = (At(session, least), At(session, most));
        return leftMm > EdgeMm && topMm > EdgeMm && rightMm < WidthMm - EdgeMm && bottomMm < HeightMm - EdgeMm - 6;
    }

    private static (Point2 Least, Point2 Most) Bounds(StudioSession session)
    {
        Point2[] places = [.. session.Settled.Bodies.SelectMany(b => b.Contacts).SelectMany(c => c.Outline), session.Balance.Whole.Centre.OnFloor];
        return (new(places.Min(p => p.XH), places.Min(p => p.YH)), new(places.Max(p => p.XH), places.Max(p => p.YH)));
    }

    private static Pen Closed(IReadOnlyList<Spot> spots)
    {
        var pen = new Pen().MoveTo(spots[0].XMm, spots[0].YMm);
        foreach (var spot in spots.Skip(1)) pen.LineTo(spot.XMm, spot.YMm);
        return pen.Close();
    }

    private readonly record struct Spot(double XMm, double YMm);
}
