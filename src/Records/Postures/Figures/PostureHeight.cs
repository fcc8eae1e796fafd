using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Postures.Figures;

/// <summary>How high a posture reaches.</summary>
public static class PostureHeight
{
    /// <summary>The highest point of its bodies with their flesh, as it is drawn, above the floor.</summary>
    /// <param name="posture">One that settles.</param>
    /// <returns>In statures, above 0; more than 1 with the arms up, or where somebody is carried.</returns>
    public static double OfH(Posture posture)
    {
        // Seen from the side at one millimetre for a stature: up is less than 0 on the page.
        var frame = new FigureFrame(FigureView.Side, false, 1, 0, 0);
        return PostureFigure.Bodies(posture.Settle(), frame).SelectMany(body => body.Shorts.Concat(body.Shirt).SelectMany(s => s)
            .Concat(body.Limbs.SelectMany(l => l.Upper.Concat(l.Lower).Concat(l.Tip.SelectMany(t => t))))
            .Append(body.Head.Middle)).Max(ball => ball.RadiusMm - ball.YMm);
    }
}
