using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>Drawn pictures to try the page with: nobody is on them.</summary>
public static class PhotoSample
{
    private const double WidthMm = 240, HeightMm = 320;

    /// <summary>The names of the samples.</summary>
    public static IReadOnlyList<string> Keys { get; } = ["OneFoot", "Handstand"];

    /// <summary>A sample's posture, on the floor.</summary>
    /// <param name="key">One of <see cref="Keys"/>.</param>
    public static SettledPosture Posture(string key) => new Posture(
        key, key == "OneFoot" ? PostureGroup.Upright : PostureGroup.Inverted, key == "OneFoot" ? OneFoot : Handstand,
        key == "OneFoot" ? [new(ContactPart.Foot, Side.Right)] : [new(ContactPart.Hand, Side.Left), new(ContactPart.Hand, Side.Right)]).Settle();

    /// <summary>A sample as a drawing.</summary>
    /// <param name="key">One of <see cref="Keys"/>.</param>
    /// <param name="isFront">Whether from the front.</param>
    public static Figure Of(string key, bool isFront)
    {
        var drawn = PostureFigure.Of(Posture(key), new FigureOptions(isFront ? FigureView.Front : FigureView.Side, WidthMm - 40, HeightMm - 40), "");
        // On white, with air around it: a picture, not a figure cut out.
        var frame = drawn.Frame with { OriginXMm = drawn.Frame.OriginXMm + 20, OriginYMm = drawn.Frame.OriginYMm + 20 };
        var figure = PostureFigure.Of(Posture(key), new FigureOptions(isFront ? FigureView.Front : FigureView.Side, WidthMm, HeightMm) { Frame = frame }, "");
        return figure with { Scene = figure.Scene with { Shapes = [new Box(0, 0, WidthMm, HeightMm, Tone.Ground), .. figure.Scene.Shapes] } };
    }

    /// <summary>Says of a picture what is true of a sample, so that only its points are left to mark.</summary>
    /// <param name="key">One of <see cref="Keys"/>.</param>
    /// <param name="view">A picture that shows it.</param>
    public static void Describe(string key, PhotoView view)
    {
        view.SetArmsApart(false);
        view.SetLegsApart(key == "OneFoot");
        foreach (var touch in view.Touching.ToArray()) view.SetTouching(touch, false);
        IReadOnlyList<PhotoTouch> touching = key == "OneFoot" ? [view.TouchesOf(ContactPart.Foot)[0]] : view.TouchesOf(ContactPart.Hand);
        foreach (var touch in touching) view.SetTouching(touch, true);
    }

    private static Pose OneFoot => Bent(Pose.Upright,
        (Joint.HipFlexion, Side.Left, 70), (Joint.KneeFlexion, Side.Left, 85), (Joint.ShoulderFlexion, Side.Middle, 65), (Joint.ElbowFlexion, Side.Middle, 15));

    private static Pose Handstand => Bent(Pose.Upright.Placed(Math.PI, 0, 0),
        (Joint.ShoulderFlexion, Side.Middle, 176), (Joint.AnkleFlexion, Side.Middle, -45), (Joint.ForearmPronation, Side.Middle, 90), (Joint.WristExtension, Side.Middle, 85));

    private static Pose Bent(Pose pose, params ReadOnlySpan<(Joint Joint, Side Side, double Deg)> bends)
    {
        foreach (var (joint, side, deg) in bends) pose = pose.With(joint, side, deg * Math.PI / 180);
        return pose;
    }
}
