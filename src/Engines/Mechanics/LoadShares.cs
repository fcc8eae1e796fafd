namespace Slantwise.Engines.Mechanics;

/// <summary>How a body's weight is shared by its contacts, when it is still and pushes straight down.</summary>
/// <param name="Shares">One a contact, in the order given; empty where nothing holds.</param>
/// <param name="Basis">What they rest on.</param>
public sealed record LoadShares(IReadOnlyList<LoadShare> Shares, LoadBasis Basis)
{
    /// <summary>The shares of point contacts under a centre of mass.</summary>
    /// <param name="contacts">Where each contact carries, shape (n), n ≥ 1, any order, on the floor.</param>
    /// <param name="centreOnFloor">The point on the floor below the centre of mass.</param>
    /// <returns>Shares that sum to 1, or none with <see cref="LoadBasis.NotHeld"/>.</returns>
    /// <exception cref="ArgumentException">No contact.</exception>
    /// <remarks>
    /// Three contacts: barycentric weights, exact. Four and more: equally stiff contacts that cannot pull, the smallest sum of
    /// squared reactions in equilibrium; a contact that would have to pull carries nothing. The bounds are the extreme points of
    /// statics with reactions of 0 or more: each has at most three contacts that carry. Source: [Gill1991] section 5.1, [Dantzig1963] ch. 4.
    /// </remarks>
    public static LoadShares Of(ReadOnlySpan<Point2> contacts, Point2 centreOnFloor)
    {
        if (contacts.Length == 0) throw new ArgumentException("At least one contact is needed.", nameof(contacts));
        Span<int> own = contacts.Length <= 64 ? stackalloc int[contacts.Length] : new int[contacts.Length];
        for (var i = 0; i < own.Length; i++) own[i] = i;
        return OfGroups(contacts, own, own.Length, centreOnFloor);
    }

    /// <summary>The shares of contacts that carry over their whole print, for a centre of mass that misses the line or triangle of their middles.</summary>
    /// <param name="prints">One outline a contact, each with one point or more, on the floor.</param>
    /// <param name="centreOnFloor">The point on the floor below the centre of mass.</param>
    /// <returns>Equally stiff points spread over the prints, summed for each contact; the bounds are statics alone.</returns>
    /// <exception cref="ArgumentException">No contact.</exception>
    public static LoadShares OfPrints(IReadOnlyList<IReadOnlyList<Point2>> prints, Point2 centreOnFloor)
    {
        if (prints.Count == 0) throw new ArgumentException("At least one contact is needed.", nameof(prints));
        var count = 0;
        for (var i = 0; i < prints.Count; i++) count += prints[i].Count;
        var (points, contacts) = (new Point2[count], new int[count]);
        for (int i = 0, at = 0; i < prints.Count; i++)
            for (var j = 0; j < prints[i].Count; j++, at++) (points[at], contacts[at]) = (prints[i][j], i);
        return OfGroups(points, contacts, prints.Count, centreOnFloor);
    }

    private static LoadShares OfGroups(ReadOnlySpan<Point2> points, ReadOnlySpan<int> contacts, int contactCount, Point2 centre)
    {
        Span<double> least = contactCount <= 64 ? stackalloc double[contactCount] : new double[contactCount];
        Span<double> most = contactCount <= 64 ? stackalloc double[contactCount] : new double[contactCount];
        if (!LoadBounds.Find(points, contacts, centre, least, most)) return new LoadShares([], LoadBasis.NotHeld);

        var isDecided = true;
        for (var i = 0; i < contactCount; i++) isDecided &= most[i] - least[i] < 1e-9;
        Span<double> shares = contactCount <= 64 ? stackalloc double[contactCount] : new double[contactCount];
        if (isDecided) least.CopyTo(shares);
        else EqualStiffness.Share(points, contacts, centre, shares);

        var answer = new LoadShare[contactCount];
        for (var i = 0; i < answer.Length; i++) answer[i] = new LoadShare(shares[i], least[i], most[i]);
        return new LoadShares(answer, isDecided ? LoadBasis.Statics : LoadBasis.EqualStiffness);
    }
}
