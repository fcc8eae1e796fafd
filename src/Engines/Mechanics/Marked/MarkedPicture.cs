namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>A picture as far as the engine knows it: points and what touches the floor. Never the picture itself.</summary>
/// <param name="Points">The marks, any order; a point may be marked more than once.</param>
/// <param name="Contacts">What touches the floor.</param>
public sealed record MarkedPicture(IReadOnlyList<MarkedPoint> Points, IReadOnlyList<MarkedContact> Contacts)
{
    /// <summary>How often the picture must be turned clockwise by a quarter until down is down, 0 to 3. Nothing else depends on what is up.</summary>
    public int QuarterTurnCount { get; init; }

    /// <summary>From what the direction of gravity is known.</summary>
    public LevelBasis Level { get; init; }

    /// <summary>Something upright, from its upper to its lower end; only for <see cref="LevelBasis.Upright"/>.</summary>
    public (PointPx Top, PointPx Bottom)? Upright { get; init; }

    /// <summary>What is missing for an answer; empty where there is enough.</summary>
    public IReadOnlyList<MarkedNeed> Needs()
    {
        var needs = new List<MarkedNeed>();
        if (!Has(Landmark.Crown, Landmark.Jaw)) needs.Add(MarkedNeed.Head);
        if (!Has(Landmark.Shoulder)) needs.Add(MarkedNeed.Shoulder);
        if (!Has(Landmark.Hip)) needs.Add(MarkedNeed.Hip);
        if (!Has(Landmark.Knee, Landmark.Ankle, Landmark.Heel, Landmark.Toe)) needs.Add(MarkedNeed.Leg);
        if (Contacts.Count == 0 || !Contacts.All(HasEnds)) needs.Add(MarkedNeed.Contact);
        if (Level == LevelBasis.Upright && !(Upright is { } upright && (upright.Bottom - upright.Top).LengthPx > 0)) needs.Add(MarkedNeed.Upright);
        return needs;
    }

    private bool Has(params Landmark[] anyOf) => Points.Any(p => anyOf.Contains(p.Landmark));

    private bool HasEnds(MarkedContact contact) => contact.Ends.Count is 1 or 2
        && contact.Ends.All(end => end.Landmark is not { } landmark || Points.Any(p => p.Landmark == landmark));
}
