using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
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
    public static SettledPosture Posture(string key)
    {
        if (key != "OneFoot") return Of("handstand").Settle();
        // Both arms to the front, so that one mark stands for both and none points towards the camera.
        var posture = Of("one-foot-knee-high");
        var pose = posture.Pose.With(Joint.ShoulderAbduction, Side.Middle, 0).With(Joint.ShoulderFlexion, Side.Middle, 60 * Math.PI / 180);
        return (posture with { Pose = pose }).Settle();
    }

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

    private static Posture Of(string key) => PostureLibrary.Find(key) ?? throw new InvalidOperationException($"The library has no posture '{key}'.");
}
