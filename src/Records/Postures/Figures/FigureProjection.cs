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

    public static FigureFrame Fitting(SettledPosture settled, FigureOptions options)
    {
        var raw = new FigureFrame(options.View, IsFromBehind(settled), 1, 0, 0);
        var (leftH, topH, rightH, bottomH) = Bounds(settled, options, raw);
        var statureMm = Math.Min(
            (options.WidthMm - 2 * EdgeMm) / (rightH - leftH + 2 * EdgeH), (options.HeightMm - 2 * EdgeMm) / (bottomH - topH + 2 * EdgeH));
        if (options.StatureMm is { } wishedMm) statureMm = Math.Min(statureMm, wishedMm);
        // Figures of one sheet stand on one line: at the bottom, not in the middle.
        var originXMm = options.WidthMm / 2 - statureMm * (leftH + rightH) / 2;
        var originYMm = options.HeightMm - EdgeMm - statureMm * (bottomH + EdgeH);
        return raw with { StatureMm = statureMm, OriginXMm = Math.Round(originXMm, 2), OriginYMm = Math.Round(originYMm, 2) };
    }

    /// <summary>A posture looks back where the face does; a face that looks up or down asks the chest.</summary>
    public static bool IsFromBehind(SettledPosture settled)
    {
        var face = settled.Body.Skeleton.Frame(SegmentKind.Head, Side.Middle).Turned.X.XH;
        if (Math.Abs(face) > -LooksBack) return face < 0;
        return settled.Body.Skeleton.Frame(SegmentKind.UpperTrunk, Side.Middle).Turned.X.XH < LooksBack;
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
