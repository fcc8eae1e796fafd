using Slantwise.Engines.Drawing.Figures;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures.Figures;

/// <summary>Chooses the frame of a figure: from which side, how large, and where in its box.</summary>
internal static class FigureProjection
{
    // Room for outlines, which are finest at a fixed width and grow with the figure.
    private const double EdgeMm = .6;
    private const double EdgeH = .012;
    private const double LooksBack = -.2;
    private const double FrontByFraction = 1.04;

    public static FigureFrame Fitting(SettledPosture settled, FigureOptions options)
    {
        var raw = new FigureFrame(options.View, IsFromBehind(settled), 1, 0, 0);
        var (stage, bounds) = (PostureStage.Of(settled, options, raw), Bounds(settled, options, raw));
        var statureMm = Scale(bounds, options, 0);
        // A wall's strokes are as wide as the ink asks, which the scale decides.
        var wallMm = stage.Wall.Count == 2 ? FigureInk.Of(statureMm).WallMm : 0;
        statureMm = Scale(bounds, options, wallMm);
        if (options.StatureMm is { } wishedMm) statureMm = Math.Min(statureMm, wishedMm);
        // Figures of one sheet stand on one line: at the bottom, not in the middle.
        var originXMm = (options.WidthMm - stage.BehindWall * wallMm) / 2 - statureMm * (bounds.LeftH + bounds.RightH) / 2;
        var originYMm = options.HeightMm - EdgeMm - statureMm * (bounds.BottomH + EdgeH);
        return raw with { StatureMm = statureMm, OriginXMm = Math.Round(originXMm, 2), OriginYMm = Math.Round(originYMm, 2) };
    }

    private static double Scale((double LeftH, double TopH, double RightH, double BottomH) bounds, FigureOptions options, double wallMm) => Math.Min(
        (options.WidthMm - wallMm - 2 * EdgeMm) / (bounds.RightH - bounds.LeftH + 2 * EdgeH),
        (options.HeightMm - 2 * EdgeMm) / (bounds.BottomH - bounds.TopH + 2 * EdgeH));

    /// <summary>A posture looks back where the face does; a face that looks up or down asks the chest.</summary>
    public static bool IsFromBehind(SettledPosture settled)
    {
        var face = settled.Body.Skeleton.Frame(SegmentKind.Head, Side.Middle).Turned.X.XH;
        if (Math.Abs(face) > -LooksBack) return face < 0;
        return settled.Body.Skeleton.Frame(SegmentKind.UpperTrunk, Side.Middle).Turned.X.XH < LooksBack;
    }

    /// <summary>The view across which trunk and limbs are longest; trunk and legs make the shape, so they count three times.</summary>
    public static FigureView ClearestView(SettledPosture settled)
    {
        var bones = settled.Bodies.SelectMany(b => Bones(b.Skeleton)).ToArray();
        double Seen(FigureView view)
        {
            var frame = new FigureFrame(view, false, 1, 0, 0);
            return bones.Sum(bone =>
            {
                var (from, to) = (frame.At(bone.From), frame.At(bone.To));
                return bone.Weight * Math.Sqrt(Math.Pow(to.XMm - from.XMm, 2) + Math.Pow(to.YMm - from.YMm, 2));
            });
        }
        return Seen(FigureView.Front) > FrontByFraction * Seen(FigureView.Side) ? FigureView.Front : FigureView.Side;
    }

    private static IEnumerable<(Point3 From, Point3 To, int Weight)> Bones(Skeleton skeleton)
    {
        Point3 At(SegmentKind kind, Side side) => skeleton.Frame(kind, side).Origin;
        yield return (At(SegmentKind.LowerTrunk, Side.Middle), At(SegmentKind.Head, Side.Middle), 3);
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            yield return (At(SegmentKind.UpperArm, side), At(SegmentKind.Forearm, side), 1);
            yield return (At(SegmentKind.Forearm, side), At(SegmentKind.Hand, side), 1);
            yield return (At(SegmentKind.Thigh, side), At(SegmentKind.Shank, side), 3);
            yield return (At(SegmentKind.Shank, side), At(SegmentKind.Foot, side), 3);
        }
    }

    private static (double LeftH, double TopH, double RightH, double BottomH) Bounds(SettledPosture settled, FigureOptions options, FigureFrame raw)
    {
        var (leftH, topH, rightH, bottomH) = (double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        var bodies = PostureFigure.Bodies(settled, raw);
        foreach (var round in bodies.SelectMany(Rounds)) Take(round.XMm, round.YMm, round.RadiusMm);
        var stage = PostureStage.Of(settled, options, raw);
        foreach (var spot in stage.Floor.Concat(stage.Wall).Concat(stage.Base).Concat(stage.Gravity).Concat(stage.Contacts.SelectMany(c => c)))
            Take(spot.XMm, spot.YMm, 0);
        return (leftH, topH, rightH, bottomH);

        void Take(double xH, double yH, double radiusH)
        {
            (leftH, rightH) = (Math.Min(leftH, xH - radiusH), Math.Max(rightH, xH + radiusH));
            (topH, bottomH) = (Math.Min(topH, yH - radiusH), Math.Max(bottomH, yH + radiusH));
        }
    }

    private static IEnumerable<Round> Rounds(FigureBody body) => body.Shorts.Concat(body.Shirt).SelectMany(s => s)
        .Concat(body.Limbs.SelectMany(l => l.Upper.Concat(l.Lower).Concat(l.Tip.SelectMany(t => t))))
        // The nose stands out of the head.
        .Append(body.Head.Middle with { RadiusMm = 1.15 * body.Head.Middle.RadiusMm });
}
