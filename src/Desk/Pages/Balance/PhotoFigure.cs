using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>The small figure that shows which point is asked for.</summary>
public static class PhotoFigure
{
    private const double WidthMm = 34, HeightMm = 44;
    private static readonly Dictionary<FigureView, Figure> Bodies = new[] { FigureView.Side, FigureView.Front }.ToDictionary(v => v, Body);

    /// <summary>The figure with the point.</summary>
    /// <param name="step">A point of the body; for anything else the figure is without one.</param>
    /// <param name="isFront">Whether the picture is from the front.</param>
    /// <param name="isNearLeft">Whether the limb nearer to the first camera is on the left of a picture from the front.</param>
    /// <returns>Without a description: the prompt beside it says which point.</returns>
    public static Scene Of(PhotoStep? step, bool isFront, bool isNearLeft)
    {
        var figure = Bodies[isFront ? FigureView.Front : FigureView.Side];
        if (step?.Landmark is not { } landmark) return figure.Scene;
        // The figure from the side shows its right; from the front its right is on the left of the drawing.
        var isRight = step.Value.Side != Side.Right == (!isFront || isNearLeft);
        var at = LandmarkPlace.Of(Skeleton, landmark, isRight ? Side.Right : Side.Left);
        var (xMm, yMm, _) = figure.Frame.At(at);
        return figure.Scene with
        {
            Shapes = [.. figure.Scene.Shapes, new Disc(xMm, yMm, 3.1, Tone.Ground), new Disc(xMm, yMm, 2.4, Tone.Caution), new Disc(xMm, yMm, 4.2, Tone.Caution, .6)],
        };
    }

    private static Posture Posture => new("figure", PostureGroup.Upright, Pose.Upright
        .With(Joint.ShoulderFlexion, Side.Right, 55 * Math.PI / 180).With(Joint.ShoulderFlexion, Side.Left, -25 * Math.PI / 180)
        .With(Joint.ShoulderAbduction, Side.Middle, 25 * Math.PI / 180).With(Joint.ElbowFlexion, Side.Middle, 25 * Math.PI / 180)
        .With(Joint.HipFlexion, Side.Right, 22 * Math.PI / 180).With(Joint.KneeFlexion, Side.Right, 8 * Math.PI / 180)
        .With(Joint.HipFlexion, Side.Left, -14 * Math.PI / 180), [new(ContactPart.Foot, Side.Left), new(ContactPart.Foot, Side.Right)]);

    private static readonly SettledPosture Settled = Posture.Settle();

    private static Skeleton Skeleton => Settled.Body.Skeleton;

    private static Figure Body(FigureView view) =>
        PostureFigure.Of(Posture.Settle(), new FigureOptions(view, WidthMm, HeightMm) { ShowsFloor = false }, "");
}
