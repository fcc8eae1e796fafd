using MathNet.Numerics.LinearAlgebra;

namespace Slantwise.Engines.Mechanics;

/// <summary>How a body's weight is shared by its contacts, when it is still and pushes straight down.</summary>
/// <param name="Shares">One a contact, in the order given; empty where nothing holds.</param>
/// <param name="Basis">What they rest on.</param>
public sealed record LoadShares(IReadOnlyList<LoadShare> Shares, LoadBasis Basis)
{
    // A millionth of a stature, a few micrometres: nearer than that counts as on the line.
    private const double OnLineH = 1e-6;

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
        return OfGroups(contacts.ToArray(), Enumerable.Range(0, contacts.Length).ToArray(), contacts.Length, centreOnFloor);
    }

    /// <summary>The shares of contacts that carry over their whole print, for a centre of mass that misses the line or triangle of their middles.</summary>
    /// <param name="prints">One outline a contact, each with one point or more, on the floor.</param>
    /// <param name="centreOnFloor">The point on the floor below the centre of mass.</param>
    /// <returns>Equally stiff points spread over the prints, summed for each contact; the bounds are statics alone.</returns>
    /// <exception cref="ArgumentException">No contact.</exception>
    public static LoadShares OfPrints(IReadOnlyList<IReadOnlyList<Point2>> prints, Point2 centreOnFloor)
    {
        if (prints.Count == 0) throw new ArgumentException("At least one contact is needed.", nameof(prints));
        var groups = prints.SelectMany((print, contact) => Enumerable.Repeat(contact, print.Count)).ToArray();
        return OfGroups(prints.SelectMany(p => p).ToArray(), groups, prints.Count, centreOnFloor);
    }

    private static LoadShares OfGroups(Point2[] points, int[] groups, int groupCount, Point2 centre)
    {
        var (least, most) = Bounds(points, groups, groupCount, centre);
        if (least is null) return new LoadShares([], LoadBasis.NotHeld);
        var isDecided = least.Zip(most!, (l, m) => m - l).All(gapFraction => gapFraction < 1e-9);
        var shares = least;
        if (!isDecided)
        {
            shares = new double[groupCount];
            var each = EqualStiffness(points, centre);
            for (var i = 0; i < each.Length; i++) shares[groups[i]] += each[i];
        }
        return new LoadShares(
            shares.Select((share, i) => new LoadShare(share, least[i], most![i])).ToArray(),
            isDecided ? LoadBasis.Statics : LoadBasis.EqualStiffness);
    }

    // A rigid body on equally stiff contacts sinks as a plane: each carries what the plane is below it, and nothing where it is
    // above, since a floor cannot pull. The plane is the maximum of a concave function of three numbers: Newton with halved steps.
    private static double[] EqualStiffness(Point2[] points, Point2 centre)
    {
        var arms = points.Select(p => Vector<double>.Build.DenseOfArray([1, p.XH - centre.XH, p.YH - centre.YH])).ToArray();
        var load = Vector<double>.Build.DenseOfArray([1, 0, 0]);
        double Height(Vector<double> at) => load * at - arms.Sum(arm => Math.Pow(Math.Max(0, arm * at), 2)) / 2;

        var plane = load / points.Length;
        for (var round = 0; round < 200; round++)
        {
            var carrying = arms.Where(arm => arm * plane > 0).ToArray();
            var missing = load - carrying.Aggregate(Vector<double>.Build.Dense(3), (sum, arm) => sum + (arm * plane) * arm);
            if (missing.L2Norm() < 1e-13) break;
            var stiffness = carrying.Aggregate(Matrix<double>.Build.DenseDiagonal(3, 1e-12), (sum, arm) => sum + arm.OuterProduct(arm));
            var step = stiffness.Cholesky().Solve(missing);
            var (now, length) = (Height(plane), 1.0);
            while (length > 1e-9 && Height(plane + length * step) < now + 1e-4 * length * (missing * step)) length /= 2;
            plane += length * step;
        }
        return arms.Select(arm => Math.Max(0, arm * plane)).ToArray();
    }

    private static (double[]? Least, double[]? Most) Bounds(Point2[] points, int[] groups, int groupCount, Point2 centre)
    {
        var n = points.Length;
        double[]? least = null, most = null;
        void Take(ReadOnlySpan<(int Contact, double ShareFraction)> corner)
        {
            least ??= Enumerable.Repeat(double.PositiveInfinity, groupCount).ToArray();
            most ??= new double[groupCount];
            for (var i = 0; i < groupCount; i++)
            {
                var shareFraction = 0.0;
                foreach (var carried in corner)
                    if (groups[carried.Contact] == i) shareFraction += carried.ShareFraction;
                least[i] = Math.Min(least[i], shareFraction);
                most[i] = Math.Max(most[i], shareFraction);
            }
        }

        for (var i = 0; i < n; i++)
        {
            if ((points[i] - centre).LengthH <= OnLineH) Take([(i, 1)]);
            for (var j = i + 1; j < n; j++)
            {
                if (OnSegment(points[i], points[j], centre) is { } atFraction) Take([(i, 1 - atFraction), (j, atFraction)]);
                for (var k = j + 1; k < n; k++)
                {
                    var twice = Point2.Turn(points[i], points[j], points[k]);
                    if (Math.Abs(twice) < OnLineH * OnLineH) continue;
                    var first = Point2.Turn(centre, points[j], points[k]) / twice;
                    var second = Point2.Turn(points[i], centre, points[k]) / twice;
                    var third = 1 - first - second;
                    if (Math.Min(first, Math.Min(second, third)) >= 0) Take([(i, first), (j, second), (k, third)]);
                }
            }
        }
        return (least, most);
    }

    private static double? OnSegment(Point2 a, Point2 b, Point2 centre)
    {
        var along = b - a;
        if (along.LengthH <= OnLineH || Math.Abs(Point2.Turn(a, b, centre)) / along.LengthH > OnLineH) return null;
        var to = centre - a;
        var atFraction = (along.XH * to.XH + along.YH * to.YH) / (along.LengthH * along.LengthH);
        return atFraction is >= 0 and <= 1 ? atFraction : null;
    }
}
