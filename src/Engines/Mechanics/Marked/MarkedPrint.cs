namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A contact laid along the floor of a view: from its first end on the left to its last on the right.</summary>
/// <param name="Contact">What was marked.</param>
/// <param name="OnFloorPx">A place of it on the floor.</param>
/// <param name="First">The mark of its left end, and which point of the body it is.</param>
/// <param name="Last">The mark of its right end, and which point of the body it is.</param>
/// <param name="FirstPx">Its left end, along level.</param>
/// <param name="LastPx">Its right end, along level.</param>
/// <param name="Middle">Where it carries.</param>
/// <param name="IsAssumed">Whether its size is taken from the table of patches.</param>
internal sealed record MarkedPrint(
    MarkedContact Contact, PointPx OnFloorPx, (MarkedPlace Place, Landmark? Landmark) First,
    (MarkedPlace Place, Landmark? Landmark) Last, double FirstPx, double LastPx, MarkedPlace Middle, bool IsAssumed)
{
    public double MiddlePx => (FirstPx + LastPx) / 2;

    public bool IsGuessed => First.Place.GuessesH.Any(g => g != 0) || Last.Place.GuessesH.Any(g => g != 0);

    public static IReadOnlyList<(MarkedContact Contact, IReadOnlyList<(MarkedPlace Place, Landmark? Landmark)> Ends, MarkedPlace OnFloor)> Places(
        MarkedBody body, IReadOnlyList<MarkedContact> contacts)
    {
        var places = new List<(MarkedContact, IReadOnlyList<(MarkedPlace, Landmark?)>, MarkedPlace)>();
        var others = 0;
        foreach (var contact in contacts)
        {
            var (ends, low) = (new List<(MarkedPlace Place, Landmark?)>(), new List<MarkedPlace>());
            foreach (var end in contact.Ends)
            {
                List<MarkedPlace> found = end.Landmark is { } landmark ? [.. OnSides(body, landmark, contact.Side)] : [body.Other(others++)];
                ends.AddRange(found.Select(f => (f, end.Landmark)));
                if (end.Landmark is not { } point || MarkedContact.IsOnFloor(point)) low.AddRange(found);
            }
            places.Add((contact, ends, Mean(low.Count > 0 ? low : [.. ends.Select(e => e.Place)])));
        }
        return places;
    }

    public static MarkedPrint Of(MarkedBody body, (MarkedContact Contact, IReadOnlyList<(MarkedPlace Place, Landmark? Landmark)> Ends, MarkedPlace OnFloor) place, MarkedTilt tilt, double pxPerH)
    {
        double Along(MarkedPlace end) => PointPx.Dot(end.At(body.Points), tilt.Level);
        var (first, last) = (place.Ends.MinBy(e => Along(e.Place)), place.Ends.MaxBy(e => Along(e.Place)));
        var isAssumed = place.Contact.Ends.Count == 1;
        var patch = ContactPatch.Of(place.Contact.Part);
        // The view may show its long side or its short one: the short one promises less.
        var halfPx = isAssumed ? Math.Min(patch.LengthH, patch.BreadthH) / 2 * pxPerH : 0;
        return new MarkedPrint(
            place.Contact, place.OnFloor.At(body.Points), first, last, Along(first.Place) - halfPx, Along(last.Place) + halfPx,
            MarkedPlace.Between(first.Place, last.Place, .5), isAssumed);
    }

    // One contact for both sides reaches over both, where they were marked apart.
    private static IEnumerable<MarkedPlace> OnSides(MarkedBody body, Landmark landmark, Side side) =>
        side != Side.Middle || !MarkedPoint.IsPaired(landmark) || body.IsBoth(landmark)
            ? [body.Place(landmark, side)]
            : [body.Place(landmark, Side.Left), body.Place(landmark, Side.Right)];

    private static MarkedPlace Mean(IReadOnlyList<MarkedPlace> places) =>
        MarkedPlace.Sum(places.Select(p => (1.0 / places.Count, p)).ToArray());
}
