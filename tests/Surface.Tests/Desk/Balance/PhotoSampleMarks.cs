using Slantwise.Desk.Pages.Balance;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Surface.Tests.Desk.Balance;

/// <summary>Where each mark of a drawn sample belongs, from the body it was drawn from.</summary>
internal static class PhotoSampleMarks
{
    /// <summary>A step's place, in fractions of the drawing from the left and from the top.</summary>
    public static (double LeftFraction, double TopFraction) Of(string key, bool isFront, PhotoStep step)
    {
        var figure = PhotoSample.Of(key, isFront);
        var (xMm, yMm, _) = figure.Frame.At(Place(key, step));
        return (xMm / figure.Scene.WidthMm, yMm / figure.Scene.HeightMm);
    }

    /// <summary>A picture of the sample, everything marked where it belongs.</summary>
    public static PhotoView Marked(string key, bool isFront = false)
    {
        var view = new PhotoView(isFront);
        view.Show(900, 1200);
        PhotoSample.Describe(key, view);
        while (view.Current is { } step)
        {
            var (left, top) = Of(key, isFront, step);
            view.Place(new(900 * left, 1200 * top));
        }
        return view;
    }

    // The nearer limbs (left in a step) are the performer's right on one foot; in a handstand both are alike.
    private static Point3 Place(string key, PhotoStep step)
    {
        var body = PhotoSample.Posture(key).Body;
        var side = step.Side == Side.Right ? Side.Left : Side.Right;
        if (step.Landmark is { } landmark) return LandmarkPlace.Of(body.Skeleton, landmark, side);
        var print = body.Contacts.First(c => c.Contact.Part == step.Part && c.Contact.Side == side).Outline;
        var edge = step.End == 0 ? print.MinBy(p => p.YH) : print.MaxBy(p => p.YH);
        return new(edge.XH, edge.YH, 0);
    }
}
