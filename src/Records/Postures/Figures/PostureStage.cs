using Slantwise.Engines.Drawing.Figures;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures.Figures;

/// <summary>Floor, wall, marks and lines around a posture, as they are seen in a frame.</summary>
internal static class PostureStage
{
    private const double BesideH = .07;
    private const double AroundH = .12;
    private const double WallAboveH = .08;

    public static FigureStage Of(SettledPosture settled, FigureOptions options, FigureFrame frame)
    {
        var isPlan = frame.View == FigureView.ThreeQuarter;
        var contacts = settled.Bodies.SelectMany(b => b.Contacts).ToArray();
        var corners = contacts.SelectMany(c => c.Outline).ToArray();
        var stage = new FigureStage();
        if (options.ShowsFloor)
            stage = WithWall(stage with { Floor = isPlan ? Mat(settled, frame) : FloorLine(settled, frame) }, settled, frame, isPlan);
        if (options.ShowsContacts)
            stage = stage with { Contacts = [.. contacts.Select(c => isPlan ? Area(c.Outline, frame) : Extent(c.Outline, frame, 0))] };
        if (options.ShowsBase && corners.Length > 0)
            stage = stage with { Base = isPlan ? Area(BaseOfSupport.Of(corners).Corners, frame) : Extent(corners, frame, -.022) };
        if (options.ShowsGravity)
        {
            var centre = 1.0 / settled.Bodies.Count * settled.Bodies.Aggregate(new Point3(0, 0, 0), (sum, b) => sum + b.Skeleton.CentreOfMass(BodyTable.Mean));
            stage = stage with { Gravity = [frame.Spot(centre), frame.Spot(centre with { ZH = 0 })] };
        }
        return stage;
    }

    private static Spot[] Area(IReadOnlyList<Point2> outline, FigureFrame frame) => [.. outline.Select(p => frame.Spot(new(p.XH, p.YH, 0)))];

    // From its leftmost to its rightmost point, a little under the floor.
    private static Spot[] Extent(IReadOnlyList<Point2> outline, FigureFrame frame, double heightH)
    {
        var spots = Area(outline, frame);
        var (fromMm, toMm, yMm) = (spots.Min(s => s.XMm), spots.Max(s => s.XMm), frame.Spot(new(0, 0, heightH)).YMm);
        return [new(fromMm, yMm), new(toMm, yMm)];
    }

    private static Spot[] FloorLine(SettledPosture settled, FigureFrame frame)
    {
        var xsMm = Joints(settled).Select(p => frame.Spot(p).XMm).ToArray();
        var (besideMm, yMm) = (BesideH * frame.StatureMm, frame.Spot(new(0, 0, 0)).YMm);
        return [new(xsMm.Min() - besideMm, yMm), new(xsMm.Max() + besideMm, yMm)];
    }

    private static Spot[] Mat(SettledPosture settled, FigureFrame frame)
    {
        var prints = settled.Bodies.SelectMany(b => b.Contacts).SelectMany(c => c.Outline).ToArray();
        var (x0, x1) = (prints.Min(p => p.XH) - AroundH, prints.Max(p => p.XH) + AroundH);
        var (y0, y1) = (prints.Min(p => p.YH) - AroundH, prints.Max(p => p.YH) + AroundH);
        if (WallAt(settled) is { } wall && Math.Abs(wall.Towards.XH) > .9) (x0, x1) = wall.Towards.XH > 0 ? (x0, wall.Place.XH) : (wall.Place.XH, x1);
        return Area([new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)], frame);
    }

    private static FigureStage WithWall(FigureStage stage, SettledPosture settled, FigureFrame frame, bool isPlan)
    {
        if (WallAt(settled) is not { } wall) return stage;
        var topH = Joints(settled).Max(p => p.ZH) + WallAboveH;
        var foot = new Point3(wall.Place.XH, wall.Place.YH, 0);
        if (frame.View == FigureView.Side)
        {
            var (from, to) = (frame.Spot(foot), frame.Spot(foot with { ZH = topH }));
            var isRight = stage.Floor[1].XMm - from.XMm < from.XMm - stage.Floor[0].XMm;
            // The floor ends at the wall.
            Spot[] floor = isRight ? [stage.Floor[0], from] : [from, stage.Floor[1]];
            return stage with { Floor = floor, Wall = [from, to], BehindWall = isRight ? 1 : -1 };
        }
        var (leftmost, rightmost) = (Joints(settled).Min(p => p.YH) - BesideH, Joints(settled).Max(p => p.YH) + BesideH);
        return stage with
        {
            Wall = [.. new[] { (leftmost, 0.0), (rightmost, 0.0), (rightmost, topH), (leftmost, topH) }.Select(c => frame.Spot(new(wall.Place.XH, c.Item1, c.Item2)))],
        };
    }

    // The wall stands where the flesh of what leans on it ends.
    private static (Point2 Place, Point2 Towards)? WallAt(SettledPosture settled)
    {
        if (settled.TowardsWall is not { } towards) return null;
        var furthestH = settled.Posture.Wall.Max(c =>
        {
            var patch = ContactPatch.Of(c.Part);
            var at = settled.Body.Skeleton.Frame(patch.Segment, c.Side).At(patch.Centre);
            return at.XH * towards.XH + at.YH * towards.YH + patch.RadiusH;
        });
        return (furthestH * towards, towards);
    }

    private static IEnumerable<Point3> Joints(SettledPosture settled) => settled.Bodies.SelectMany(b => Skeleton.Segments
        .Select(s => b.Skeleton.Frame(s.Kind, s.Side).Origin)
        .Concat(new[] { Side.Left, Side.Right }.SelectMany(side => new[]
        {
            b.Skeleton.Frame(SegmentKind.Hand, side).At(new(0, 0, -BodyLengths.HandH)),
            b.Skeleton.Frame(SegmentKind.Foot, side).At(new(BodyLengths.FootH - BodyLengths.HeelBehindAnkleH, 0, -BodyLengths.AnkleHeightH)),
        }))
        .Append(b.Skeleton.Frame(SegmentKind.Head, Side.Middle).At(new(0, 0, BodyLengths.NeckH + BodyLengths.HeadH))));
}
