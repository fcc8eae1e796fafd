using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Engines.Tests.Mechanics.Marked;

/// <summary>A settled body of ours as a picture would show it: every point projected, y down.</summary>
internal static class Drawn
{
    public const double PxPerH = 400;

    private static readonly Landmark[] Limbs =
    [
        Landmark.Shoulder, Landmark.Elbow, Landmark.Wrist, Landmark.Fingertip, Landmark.Hip, Landmark.Knee, Landmark.Ankle, Landmark.Heel, Landmark.Toe,
    ];

    /// <summary>Seen from the performer's right, front to the right: x on the picture is the front.</summary>
    public static PointPx FromSide(Point3 at) => new(700 + PxPerH * at.XH, 900 - PxPerH * at.ZH);

    /// <summary>Seen from the front: the performer's left is on the right of the picture.</summary>
    public static PointPx FromFront(Point3 at) => new(700 + PxPerH * at.YH, 900 - PxPerH * at.ZH);

    public static IReadOnlyList<MarkedPoint> Points(Skeleton skeleton, Func<Point3, PointPx> camera, bool hasWaist = true)
    {
        var points = new List<MarkedPoint>
        {
            new(Landmark.Crown, Side.Middle, camera(LandmarkPlace.Of(skeleton, Landmark.Crown, Side.Middle))),
            new(Landmark.Jaw, Side.Middle, camera(LandmarkPlace.Of(skeleton, Landmark.Jaw, Side.Middle))),
        };
        if (hasWaist) points.Add(new(Landmark.Waist, Side.Middle, camera(LandmarkPlace.Of(skeleton, Landmark.Waist, Side.Middle))));
        foreach (var side in new[] { Side.Left, Side.Right })
            points.AddRange(Limbs.Select(landmark => new MarkedPoint(landmark, side, camera(LandmarkPlace.Of(skeleton, landmark, side)))));
        return points;
    }

    public static MarkedPicture Picture(SettledBody body, Func<Point3, PointPx> camera, bool hasWaist = true) => new(
        Points(body.Skeleton, camera, hasWaist),
        [.. body.Contacts.Select(c => new MarkedContact(c.Contact.Part, c.Contact.Side, Ends(c, camera)))]);

    public static MarkedPicture Mapped(this MarkedPicture picture, Func<PointPx, PointPx> map) => picture with
    {
        Points = [.. picture.Points.Select(p => p with { At = map(p.At) })],
        Contacts = [.. picture.Contacts.Select(c => c with { Ends = [.. c.Ends.Select(e => e with { At = map(e.At) })] })],
        Upright = picture.Upright is { } upright ? (map(upright.Top), map(upright.Bottom)) : null,
    };

    // The outermost points of the print in this view.
    private static ContactEnd[] Ends(SettledContact contact, Func<Point3, PointPx> camera)
    {
        var seen = contact.Outline.Select(p => camera(new(p.XH, p.YH, 0))).OrderBy(p => p.XPx).ToArray();
        return [ContactEnd.Of(seen[0]), ContactEnd.Of(seen[^1])];
    }
}
